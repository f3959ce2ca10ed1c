import { describe, expect, test } from 'vitest';
import { Decimal } from '../../src/kernel/evaluate/decimal-settings.ts';
import { evaluateDecimal } from '../../src/kernel/evaluate/decimal.ts';
import { effectCauses, machineViews } from '../../src/paper/machine-effect/effect-ids.ts';
import { decimalReader } from '../support/decimal-reader.ts';
import { randomModel } from '../support/random-figures.ts';

type Read = (id: string) => Decimal;

const cases = Array.from({ length: 25 }, (_, at) => {
  const { seed, model, figures } = randomModel(7001 + at);
  const asked = (changes: Readonly<Record<string, string>>): Read =>
    decimalReader(model, evaluateDecimal(model.graph, new Map([...figures, ...Object.entries(changes)])));
  return { seed, model, asked };
});

const noEffect = Object.fromEntries(
  ['base', 'other'].flatMap((route) => [
    [`${route}.machine.speed`, '100'],
    [`${route}.machine.time`, '100'],
    [`${route}.machine.seconds`, '0'],
    [`${route}.machine.serviceFactor`, '1'],
  ]),
);
const switches = { soldOut: '1', ordersLimited: '0' } as const;

function expectSame(one: Decimal, other: Decimal, scale: Decimal, message: string): void {
  const off = one.minus(other).abs();
  expect(off.lessThanOrEqualTo(scale.abs().times('1e-27')), `${message}: off by ${off.toString()}`).toBe(true);
}

describe('over 25 random cases, whatever limits the machine', () => {
  test('costs alone, then every step, come to the whole cost that the statement shows', () => {
    for (const { seed, asked } of cases)
      for (const view of machineViews) {
        const at = asked({ 'machine.soldOut': switches[view] });
        for (const route of ['base', 'other']) {
          const steps = effectCauses.map(({ id }) => at(`${route}.machineEffect.${view}.${id}`));
          const sum = Decimal.sum(at(`${route}.machineEffect.costsAlone`), ...steps);
          const whole = at(`${route}.costPerYear.total`);
          expectSame(sum, whole, whole, `seed ${String(seed)}, ${view}, ${route}`);
          expectSame(at(`${route}.machineEffect.${view}.left`), whole, whole, `seed ${String(seed)}, ${view}, left`);
        }
      }
  });

  test('the steps of the difference come to the difference of the year', () => {
    for (const { seed, asked } of cases)
      for (const view of machineViews) {
        const at = asked({ 'machine.soldOut': switches[view] });
        const steps = effectCauses.map(({ id }) => at(`difference.machineEffect.${view}.${id}`));
        const sum = Decimal.sum(at('difference.machineEffect.costsAlone'), ...steps);
        expectSame(sum, at('difference.totalPerYear'), at('base.costPerYear.total'), `seed ${String(seed)}, ${view}`);
      }
  });

  test('costs alone are the costs of the same mill whose furnish does nothing to the machine', () => {
    for (const { seed, asked } of cases) {
      const [with_, without] = [asked({}), asked(noEffect)];
      for (const route of ['base', 'other']) {
        const alone = with_(`${route}.machineEffect.costsAlone`);
        expectSame(alone, without(`${route}.costPerYear.total`), alone, `seed ${String(seed)}, ${route}`);
      }
    }
  });

  test('no effect is exactly nothing, and the switch then changes nothing', () => {
    for (const { seed, asked } of cases) {
      const [limited, soldOut] = [
        asked({ ...noEffect, 'machine.soldOut': '0' }),
        asked({ ...noEffect, 'machine.soldOut': '1' }),
      ];
      for (const route of ['base', 'other']) {
        for (const { id } of effectCauses)
          expect(soldOut(`${route}.cost.machineEffect.${id}`).isZero(), `seed ${String(seed)}, ${id}`).toBe(true);
        expect(limited(`${route}.cost.total`).equals(soldOut(`${route}.cost.total`))).toBe(true);
        expect(limited(`${route}.cost.machineEffect`).isZero()).toBe(true);
      }
    }
  });
});
