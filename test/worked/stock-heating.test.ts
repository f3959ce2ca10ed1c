import { describe, expect, test } from 'vitest';
import { type Evaluation, evaluated } from '../support/evaluation.ts';
import { smallCase } from '../support/small-case.ts';

/** Stock that is heated in one disperser, by consistency and temperatures. */
function heated(
  consistency: string,
  from: string,
  to: string,
  figures: Readonly<Record<string, string>> = {},
  steam: 'indirect' | 'direct' = 'indirect',
): Evaluation {
  return evaluated(
    smallCase({
      stages: [{ id: 'heat', like: 'disperser', heat: 'computed', steam }],
      figures: {
        'mill.line.heat.heatConsistency': consistency,
        'mill.line.heat.heatFrom': from,
        'mill.line.heat.heatTo': to,
        ...figures,
      },
    }),
  );
}

// Source: heat capacities 1.35 (dry fibre, from memory) and 4.187 kJ/(kg K) (water, from memory); worked by hand.
describe('heating stock', () => {
  test('of 30 % consistency from 50 to 90 C takes 0.4448 GJ per bone-dry tonne', () => {
    // [1.35 + 4.187 x 0.7/0.3] x 40 = 11.11967 x 40 = 444.787 MJ.
    expect(heated('30 %', '50 C', '90 C').number('mill.line.heat.computedHeat').toFixed(4)).toBe('0.4448');
  });

  test('takes 1.05 times that at the boiler where 5 % is lost on the way', () => {
    const lossy = heated('30 %', '50 C', '90 C', { 'mill.line.heat.steamFactor': '1.05 1' });

    expect(lossy.number('mill.line.heat.computedHeat')).toBeCloseTo(1.05 * 0.4447866667, 9);
  });

  test('takes 1.131 times that where live steam condenses in the stock and the boiler starts from cold water', () => {
    // Steam of 2.77 GJ/t (from memory) gives up 2.77 - 4.187 x 0.090 = 2.39317 and is made from water of 15 C with
    // 2.77 - 4.187 x 0.015 = 2.707195: 0.444787/2.39317 = 0.185857 t of steam, 0.503150 GJ.
    const direct = heated(
      '30 %',
      '50 C',
      '90 C',
      { 'mill.line.heat.steamEnthalpy': '2.77 GJ/m3', 'mill.line.heat.makeUpTemperature': '15 C' },
      'direct',
    );

    expect(direct.number('mill.line.heat.condensate').toFixed(6)).toBe('0.185857');
    expect(direct.number('mill.line.heat.computedHeat').toFixed(5)).toBe('0.50315');
    expect((direct.number('mill.line.heat.computedHeat') / 0.4447866667).toFixed(3)).toBe('1.131');
    // The steam is water in the stock from then on: 0.111111 of moisture and 0.185857 of steam come in.
    expect(direct.number('mill.water.withMaterials').toFixed(6)).toBe('0.296968');
  });

  test('by 5 K at 1 % consistency takes 2.1 GJ per bone-dry tonne, which is why a warm loop is not heated stage by stage', () => {
    // [1.35 + 4.187 x 99] x 5 = 2079.3 MJ.
    expect(heated('1 %', '40 C', '45 C').number('mill.line.heat.computedHeat').toFixed(1)).toBe('2.1');
  });

  test('is charged on what enters the stage', () => {
    // All of the feed enters, and the product takes 1 bdt: 0.444787 GJ/t at 10 per GJ.
    const mill = heated('30 %', '50 C', '90 C');

    expect(mill.number('mill.cost.heat.stock').toFixed(4)).toBe('4.4479');
  });
});
