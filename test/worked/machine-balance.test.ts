import { describe, expect, test } from 'vitest';
import { type Evaluation, evaluated } from '../support/evaluation.ts';
import { smallCase } from '../support/small-case.ts';

function machine(figures: Readonly<Record<string, string>>): Evaluation {
  return evaluated(smallCase({ stages: [{ id: 'slush', like: 'pumps' }], figures }));
}

const of = (mill: Evaluation, name: string): number => mill.number(`mill.machine.${name}`);

// Source: worked by hand. N = 0.92, b = 0.08, y = 0.97, s = 0.01, phi = 0.03, sigma = 0.05.
// G = 0.92/0.92 = 1; M = 0.95/0.99 = 0.959596; broke back 0.0776; fresh 0.881996; P = 0.97 x 0.881996 = 0.855536; A = 0.026460;
// S = 0.05.
describe('a machine with 8 % broke, 1 % wet-end loss, 3 % wet-end and 5 % surface additives', () => {
  const mill = machine({
    'product.moisture': '8 %',
    'mill.machine.broke': '8 %',
    'mill.machine.brokeYield': '97 %',
    'mill.machine.wetEndLoss': '1 %',
    'mill.machine.additiveShare': '3 %',
    'mill.machine.surfaceShare': '5 %',
  });

  test.each([
    { name: 'gross', expected: '1.000000' },
    { name: 'grossTonnes', expected: '1.086957' },
    { name: 'furnish', expected: '0.959596' },
    { name: 'fresh', expected: '0.881996' },
    { name: 'stock', expected: '0.855536' },
    { name: 'wetEndAdditives', expected: '0.026460' },
    { name: 'surfaceAdditives', expected: '0.050000' },
    { name: 'brokeRejects', expected: '0.002400' },
    { name: 'wetEndLossMass', expected: '0.009596' },
  ])('has $name $expected', ({ name, expected }) => {
    expect(of(mill, name).toFixed(6)).toBe(expected);
  });

  test('takes in as much as it makes and loses: P + A + S + b G y = G + s M', () => {
    const takenIn = of(mill, 'stock') + of(mill, 'wetEndAdditives') + of(mill, 'surfaceAdditives') + 0.08 * 0.97;

    expect(takenIn).toBeCloseTo(of(mill, 'gross') + of(mill, 'wetEndLossMass'), 14);
    expect(takenIn.toFixed(6)).toBe('1.009596');
  });

  test('evaporates from 46 % press dryness to 92 % at the reel, and the water of the size', () => {
    // 1 x (0.54/0.46 - 0.08/0.92) + 0.05 x 0.9/0.1 = 1.086957 + 0.45.
    expect(of(mill, 'dryerWater').toFixed(6)).toBe('1.536957');
  });
});

// Source: worked example of a balance with N = 100 saleable dry tonnes and b = 0.08: gross 108.696, broke 8.696, fresh 100 where the
// broke line gives all back, 100.261 where it gives 97 % (derived). Broke taken for a loss would ask for 108.696.
describe('100 saleable tonnes with 8 % broke', () => {
  test.each([
    { brokeYield: '100', fresh: '100.000' },
    { brokeYield: '97', fresh: '100.261' },
  ])('need $fresh t of fresh furnish where the broke line gives back $brokeYield %', ({ brokeYield, fresh }) => {
    const mill = machine({ 'mill.machine.broke': '8 %', 'mill.machine.brokeYield': `${brokeYield} %` });

    expect((100 * of(mill, 'gross')).toFixed(3)).toBe('108.696');
    expect((100 * of(mill, 'brokeMass')).toFixed(3)).toBe('8.696');
    expect((100 * of(mill, 'fresh')).toFixed(3)).toBe(fresh);
  });
});

test('a board that must be 5 % heavier to be as strong makes everything 5 % more', () => {
  const figures = { 'product.moisture': '8 %', 'mill.machine.broke': '6 %', 'mill.machine.brokeYield': '98 %' };
  const [alike, heavier] = [machine(figures), machine({ ...figures, 'mill.machine.serviceFactor': '1.05 1' })];

  for (const name of ['gross', 'stock', 'dryerWater', 'brokeRejects']) {
    expect(of(heavier, name)).toBeCloseTo(1.05 * of(alike, name), 13);
  }
  expect(heavier.number('mill.cost.fibre')).toBeCloseTo(1.05 * alike.number('mill.cost.fibre'), 10);
});
