import { describe, expect, test } from 'vitest';
import type { Stage } from '../../src/case/case.ts';
import { clarifiedLoss, waterRemoved } from '../../src/paper/stages/washing.ts';
import { type Evaluation, evaluated } from '../support/evaluation.ts';
import { plain, valueOf } from '../support/quantity-value.ts';
import { smallCase } from '../support/small-case.ts';

/** A washer from 1 to 10 % through which 80 % of the ash passes with the water; nothing else passes. */
function washing(filtrate: NonNullable<Stage['filtrate']>): Evaluation {
  return evaluated(
    smallCase({
      stages: [{ id: 'wash', like: 'washer', filtrate }],
      figures: {
        'material.paper.ash': '20 %',
        'mill.line.wash.consistencyIn': '1 %',
        'mill.line.wash.consistencyOut': '10 %',
        'mill.line.wash.passage.ash': '80 %',
        'mill.line.wash.passage.fibre': '0 %',
        ...(filtrate === 'clarifier' ? { 'mill.line.wash.catch.ash': '92 %' } : {}),
      },
    }),
  );
}

// Source: worked by hand from the water balance. Per tonne of solids 99 t of water enter and 9 t stay: 1 - 9/99 = 0.909091 goes.
// Of the ash 0.8 x 0.909091 = 0.727273 goes with it. A clarifier that catches 0.92 of that and gives 0.08 back to the feed loses
// 0.727273 x 0.92 / (1 - 0.727273 x 0.08) = 0.710425 in the end.
describe('a washer from 1 to 10 % consistency, through which 80 % of the ash passes', () => {
  test('takes out 0.909091 of the water', () => {
    expect(valueOf(waterRemoved(plain('0.01'), plain('0.1'))).toFixed(6)).toBe('0.909091');
    expect(washing('effluent').number('mill.line.wash.waterRemoved').toFixed(6)).toBe('0.909091');
  });

  test.each([
    {
      filtrate: 'effluent',
      removed: 0.727273,
      meaning: 'loses 0.727273 of the ash where the filtrate leaves as effluent',
    },
    { filtrate: 'clarifier', removed: 0.710425, meaning: 'loses 0.710425 of the ash where a clarifier catches 92 %' },
  ] as const)('$meaning', ({ filtrate, removed }) => {
    expect(washing(filtrate).number('mill.line.wash.rejects.ash') / 0.2).toBeCloseTo(removed, 6);
  });

  test('loses nothing where the filtrate goes back as dilution', () => {
    expect(washing('dilution').number('mill.line.yield')).toBe(1);
  });

  test('sends what the clarifier catches to the sludge, and an open filtrate to the effluent', () => {
    const caught = washing('clarifier');
    const open = washing('effluent');

    expect(caught.number('mill.residue.wash.dry')).toBeGreaterThan(0.1);
    expect(open.model.graph.positions.has('mill.residue.wash.dry')).toBe(false);
    // Of 0.145455 of the feed, over a yield of 0.854545, the primary clarifier catches 85 % unless said otherwise.
    expect(open.number('mill.residue.primary.dry')).toBeCloseTo((0.85 * 0.2 * 0.7272727272727) / 0.8545454545454, 9);
  });

  test('agrees with going round the clarifier loop until nothing changes', () => {
    const passed = 0.8 * (1 - 9 / 99);
    let feed = 1;
    let lost = 0;
    for (let round = 0; round < 200; round += 1) {
      lost += feed * passed * 0.92;
      feed = feed * passed * 0.08;
    }

    expect(lost).toBeCloseTo(valueOf(clarifiedLoss(plain(passed), plain('0.92'))), 14);
  });
});
