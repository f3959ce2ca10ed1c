import { describe, expect, test } from 'vitest';
import { stageEntries, templateEntries } from '../../src/paper/catalogue.ts';
import { type Evaluation, evaluated } from '../support/evaluation.ts';
import { smallCase } from '../support/small-case.ts';
import { templateCase } from '../support/template-case.ts';

// Trade practice, no source: recovered fibre was refined in its first life; refining it again shortens it and slows drainage.
describe('refining', () => {
  const recovered = templateEntries.filter((template) => template.route === 'recovered');
  const virgin = templateEntries.filter((template) => template.route === 'virgin');
  const counterpart = (id: string): string => virgin.find((each) => each.product === productOf(id))?.id ?? '';
  const productOf = (id: string) => recovered.find((each) => each.id === id)?.product;

  test.each(recovered.map(({ id }) => ({ id })))('has no electricity in the recovered route $id', ({ id }) => {
    const mill = evaluated(templateCase(id, counterpart(id)));

    expect(mill.number(`${id}.electricity.refining`)).toBe(0);
    expect(mill.number(`${counterpart(id)}.electricity.refining`)).toBeGreaterThan(40);
  });

  test('stands in every virgin line and in no recovered one', () => {
    const refines = (train: readonly string[]) => train.some((stage) => stageEntries.get(stage)?.kind === 'refiner');

    expect(virgin.flatMap((each) => each.lines).every((line) => refines(line.train))).toBe(true);
    expect(recovered.flatMap((each) => each.lines).some((line) => refines(line.train))).toBe(false);
    expect([recovered.length, virgin.length]).toEqual([6, 6]);
  });
});

// Trade practice, no source: a drum rolls and drops the stock, so that wet-strength paper stays in sheets and leaves with the
// holes' rejects; the rotor of a vat tears most of it into fibre.
describe('wet-strength paper, 10 % of the feed', () => {
  const pulped = (like: 'drum' | 'vat'): Evaluation =>
    evaluated(
      smallCase({
        stages: [{ id: 'pulp', like }],
        figures: { 'material.paper.wetStrength': '10 %', 'mill.line.pulp.removal.fibre': '0 %' },
      }),
    );
  const drum = pulped('drum');
  const vat = pulped('vat');
  const fibreGained = (mill: Evaluation) => mill.number('mill.line.pulp.accepts.fibre') - 0.9;

  test('leaves a drum whole: 76.5 % of it as reject, 10 % as fibre', () => {
    // 10 % turns into fibre; 85 % of what stays whole is rejected: 0.9 x 0.85 = 0.765.
    expect(drum.number('mill.line.pulp.rejects.wetStrength')).toBeCloseTo(0.0765, 14);
    expect(fibreGained(drum)).toBeCloseTo(0.01, 14);
  });

  test('is torn into fibre by a vat: 55 % of it, and 11.25 % hangs on the rope', () => {
    // 55 % turns into fibre; 25 % of the 45 % that stays is pulled out: 0.1125.
    expect(fibreGained(vat)).toBeCloseTo(0.055, 14);
    expect(vat.number('mill.line.pulp.rejects.wetStrength')).toBeCloseTo(0.01125, 14);
  });

  test('yields more stock from the vat', () => {
    expect(vat.number('mill.line.yield')).toBeGreaterThan(drum.number('mill.line.yield'));
  });

  test('goes to coarse rejects from a drum and to the rope from a vat', () => {
    const dry = (mill: Evaluation, stream: string) => mill.sumOfPresent([`mill.residue.${stream}.dry`]);

    expect([dry(drum, 'coarse') > 0, dry(drum, 'rope')]).toEqual([true, 0]);
    expect([dry(vat, 'coarse'), dry(vat, 'rope') > 0]).toEqual([0, true]);
  });
});
