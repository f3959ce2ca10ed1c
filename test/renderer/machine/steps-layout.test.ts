import { describe, expect, it } from 'vitest';
import { layOutSteps, stepColumns, turned } from '../../../renderer/screens/machine/steps-layout.ts';
import { stepCells } from '../../../renderer/screens/machine/step-cells.ts';
import type { EffectSteps, MachineEffect } from '../../../src/index.ts';

const size = { width: 600, height: 138, above: 20, below: 18 };

function steps(alone: string, causes: readonly string[], left: string): EffectSteps {
  const step = (id: string, shown: string) => ({ id, label: id, quantityId: id, perYear: Number(shown), shown });
  return {
    view: 'soldOut',
    costsAlone: step('costsAlone', alone),
    causes: ['slower', 'breaks', 'seconds', 'heavier'].map((id, place) => step(id, causes[place] ?? '')),
    takenBack: step('takenBack', ''),
    left: step('left', left),
  } as EffectSteps;
}

describe('the picture of the steps', () => {
  it('starts on the ground, comes down step by step, and ends where the last step ended', () => {
    const { bars, ground } = layOutSteps(steps('-10.00', ['2.00', '1.00', '0.00', '3.00'], '-4.00'), size)!;
    const [first, slower, , , heavier, left] = bars;

    // 100 pixels for 10 million.
    expect(ground).toBe(120);
    expect([first!.top, first!.bottom]).toEqual([20, 120]);
    expect(slower!.top).toBe(20);
    expect(slower!.bottom).toBeCloseTo(40, 9);
    expect(heavier!.level).toBeCloseTo(left!.top, 9);
    expect(left!.top).toBeCloseTo(80, 9);
    expect(bars.map(({ digits }) => digits)).toEqual(['10.00', '-2.00', '-1.00', '0.00', '-3.00', '4.00']);
    expect(bars.map(({ baseGives }) => baseGives)).toEqual([true, false, false, true, false, true]);
  });

  it('hangs below the ground what recovered costs more', () => {
    const { bars, ground } = layOutSteps(steps('-1.00', ['4.00', '0.00', '0.00', '0.00'], '3.00'), size)!;

    expect(ground).toBeGreaterThan(20);
    expect(bars.at(-1)).toMatchObject({ top: ground, bottom: 120, baseGives: false });
  });

  it('is not drawn while a step cannot be worked out, and stands flat where all is nothing', () => {
    expect(layOutSteps(steps('-1.00', ['', '0.00', '0.00', '0.00'], ''), size)).toBeNull();
    const flat = layOutSteps(steps('0.00', ['0.00', '0.00', '0.00', '0.00'], '0.00'), size)!;
    expect(flat.bars.every(({ top, bottom }) => top === flat.ground && bottom === flat.ground)).toBe(true);
  });

  it('turns digits and never writes minus nothing', () => {
    expect(['-1.50', '1.50', '0.00', '-0.00', ''].map(turned)).toEqual(['1.50', '-1.50', '0.00', '0.00', '']);
  });
});

it('copies both views as numbers, and leaves empty what is not known', () => {
  const known = steps('-10.00', ['2.00', '1.00', '0.00', '3.00'], '-4.00');
  const effect = {
    soldOut: steps('-10.00', ['', '', '0.00', ''], ''),
    ordersLimited: known,
  } as unknown as MachineEffect;

  expect(stepCells(effect, '€ million a year')).toEqual([
    ['€ million a year', 'Costs alone', 'Speed', 'Breaks', 'Second quality', 'Heavier sheet', 'Left'],
    ['Sold out', 10, NaN, NaN, 0, NaN, NaN],
    ['Orders limited', 10, -2, -1, 0, -3, 4],
  ]);
  expect(stepColumns(known).map(({ id }) => id)[0]).toBe('costsAlone');
});
