import { describe, expect, test } from 'vitest';
import { type OpenCase, editStructure } from '../../../src/index.ts';
import { workOut } from '../../../src/study/open-case.ts';
import { valueOf } from '../../examples/demonstration.ts';
import { evaluated } from '../../support/evaluation.ts';
import { smallCase } from '../../support/small-case.ts';

const tip = { 'destination.tip.haulage': '0 EUR/wet-t', 'destination.tip.gateFee': '100 EUR/wet-t' };

// Common practice, no source: a disperger takes nothing out; what it hides is sold at the price of the product instead of being hauled
// away. Against it stands a stage that takes the same specks out: 80 % of 1 % specks, so that the line keeps 99.2 %.
describe('80 % of 1 % specks, hidden by a disperger or taken out as reject', () => {
  const mill = evaluated(
    smallCase({
      stages: [{ id: 'disperse', like: 'disperser' }],
      figures: {
        'material.paper.inkLarge': '1 %',
        'mill.line.disperse.turns.inkLarge-inkMid': '80 %',
        'mill.line.disperse.turns.fibre-fines': '0 %',
        'other.line.slush.removal.inkLarge': '80 %',
        'residue.coarse.dryness': '50 %',
        ...tip,
      },
    }),
  );

  test('are gone from sight by either way: 2 kg of 10 stay in a tonne of stock', () => {
    expect(mill.number('mill.product.dirt')).toBeCloseTo(2, 12);
    expect(mill.number('other.product.dirt')).toBeCloseTo(2 / 0.992, 12);
  });

  test('cost 1.6129 to haul away where they are taken out, and nothing where they are hidden', () => {
    // 0.008/0.992 bdt at 50 % dryness and 100 per wet tonne.
    expect(mill.number('other.cost.residues.coarse')).toBeCloseTo((0.008 / 0.992 / 0.5) * 100, 12);
    expect(mill.number('other.cost.residues.coarse').toFixed(4)).toBe('1.6129');
    expect(mill.number('mill.cost.residues')).toBe(0);
  });

  test('show in the difference, in the line of the residue', () => {
    expect(mill.number('difference.cost.residues.coarse').toFixed(4)).toBe('-1.6129');
  });

  test('are sold as product: 8 kg less paper is bought per tonne of feed', () => {
    // At 1/0.9 t as received per bdt and 100 per tonne.
    const [hidden, taken] = [mill.number('mill.cost.fibre'), mill.number('other.cost.fibre')];

    expect(hidden).toBeCloseTo(100 / 0.9, 10);
    expect(taken).toBeCloseTo(100 / 0.9 / 0.992, 10);
  });
});

describe('switching the disperger off', () => {
  const on = valueOf(
    workOut(
      smallCase({
        stages: [
          { id: 'clean', like: 'pumps' },
          { id: 'disperse', like: 'disperser' },
        ],
        figures: {
          'material.paper.inkLarge': '1 %',
          'material.paper.macroStickies': '0.5 %',
          'material.paper.ash': '10 %',
          'mill.line.clean.removal.ash': '50 %',
          ...tip,
        },
      }),
    ),
  );
  const off = valueOf(editStructure(on, { kind: 'remove stage', route: 'mill', line: 'line', stage: 'disperse' }));
  const change = (id: string): number => off.values.number(id) - on.values.number(id);

  test.each([
    { what: 'the feed', id: 'mill.line.feed' },
    { what: 'the yield', id: 'mill.line.yield' },
    { what: 'the rejects', id: 'mill.residue.coarse.dry' },
    { what: 'the fibre bought', id: 'mill.bought.paper' },
    { what: 'the ash of the product', id: 'mill.productAsh' },
    { what: 'the cost of residues', id: 'mill.cost.residues' },
  ])('leaves $what as it was', ({ id }) => {
    expect(on.values.number(id)).toBeGreaterThan(0);
    expect(Math.abs(change(id))).toBeLessThan(1e-14);
  });

  test('brings the dirt back: specks five times, macro-stickies twice', () => {
    // The list turns 80 % of the large ink and half of the macro-stickies.
    const ratio = (id: string) => off.values.number(id) / on.values.number(id);

    expect(ratio('mill.product.dirt')).toBeCloseTo(5, 12);
    expect(ratio('mill.product.macroStickies')).toBeCloseTo(2, 12);
  });

  test('saves its heat and its electricity', () => {
    expect(change('mill.heat.stock')).toBeCloseTo(-on.values.number('mill.line.disperse.heatUse'), 12);
    expect(on.values.number('mill.line.disperse.heatUse')).toBeGreaterThan(0.1);
    expect(change('mill.electricity.preparation')).toBeCloseTo(
      -on.values.number('mill.line.disperse.electricityUse'),
      12,
    );
  });

  test('is the same as letting it turn nothing into anything, as to mass and dirt', () => {
    const idle: OpenCase = valueOf(
      workOut({
        ...on.content,
        inputs: {
          ...on.content.inputs,
          ...Object.fromEntries(
            on.model.graph.inputs
              .filter(({ id }) => id.startsWith('mill.line.disperse.turns.'))
              .map(({ id }) => [id, { value: '0', unit: '%' }]),
          ),
        },
      }),
    );

    for (const id of ['mill.line.feed', 'mill.product.dirt', 'mill.product.macroStickies', 'mill.bought.paper'])
      expect(idle.values.exact(id)).toBe(off.values.exact(id));
  });
});
