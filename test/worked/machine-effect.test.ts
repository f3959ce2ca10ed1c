import { describe, expect, it } from 'vitest';
import { Failure } from '../../src/kernel/evaluate/failure.ts';
import { evaluated } from '../support/evaluation.ts';
import { smallCase } from '../support/small-case.ts';

/**
 * A mill of 100 000 t in 8 000 h, whose product sells for 800 EUR/t. Route "mill" is slower and heavier; route "other" is the reference.
 * Figures are chosen so that all steps come out whole:
 *   f = 0.95, e = 0.96, g = 1.25, u = 4 % with an allowance of 50 EUR/t, an extra hour 300 EUR.
 * v, what follows a tonne made, is read from the statement before any effect, where nothing else is charged.
 */
const effect = {
  'mill.machine.speed': '95',
  'mill.machine.time': '96',
  'mill.machine.seconds': '4',
  'mill.machine.serviceFactor': '1.25',
};
const none = {
  'mill.machine.speed': '100',
  'mill.machine.time': '100',
  'mill.machine.seconds': '0',
  'mill.machine.serviceFactor': '1',
};
const mill = evaluated(
  smallCase({
    stages: [{ id: 'slush', like: 'pumps' }],
    route: {
      charges: [{ id: 'rent', label: 'Rent', behaviour: 'per year', avoidable: false, nature: 'market' }],
    },
    figures: {
      'product.hours': '6000 h/a',
      'product.price': '800 EUR/t',
      'machine.secondsAllowance': '50 EUR/t',
      'machine.extraHour': '300 EUR/h',
      'mill.charge.rent': '200000 EUR/a',
      ...Object.fromEntries(
        Object.entries(none).map(([id, value]) => [id, `${value} ${id.endsWith('serviceFactor') ? '1' : '%'}`]),
      ),
    },
  }),
);
const tonnes = 100_000;
const v = mill.number('mill.cost.total') - 2;
const soldOut = (figures: Record<string, string> = {}) => mill.withChanges({ 'machine.soldOut': '1', ...figures });
const limited = (figures: Record<string, string> = {}) => mill.withChanges({ 'machine.soldOut': '0', ...figures });
const step = (of: ReturnType<typeof soldOut>, view: string, name: string) =>
  of.number(`mill.machineEffect.${view}.${name}`);
const whole = (of: ReturnType<typeof soldOut>) => of.number('mill.costPerYear.total');

describe('a machine that is sold out', () => {
  it('loses 5 000 t to 95 % speed, each worth the price less what follows the tonne', () => {
    const slow = soldOut({ 'mill.machine.speed': '95' });

    expect(slow.number('mill.machineEffect.contribution')).toBeCloseTo(800 - v, 9);
    expect(slow.number('mill.machineEffect.tonnesFewer.slower')).toBe(5000);
    expect(step(slow, 'soldOut', 'slower')).toBeCloseTo(5000 * (800 - v), 5);
    expect(whole(slow) - whole(soldOut())).toBeCloseTo(5000 * (800 - v), 5);
  });

  it('loses 4 % of its time in tonnes of the speed it has: 100 000 x 0.95 x 0.04 = 3 800 t', () => {
    const both = soldOut({ 'mill.machine.speed': '95', 'mill.machine.time': '96' });

    expect(both.number('mill.machineEffect.tonnesFewer.breaks')).toBeCloseTo(3800, 9);
    expect(step(both, 'soldOut', 'breaks')).toBeCloseTo(3800 * (800 - v), 5);
  });

  it('sells 4 % of 91 200 t as second quality for 50 less: 182 400', () => {
    const worse = soldOut(effect);

    expect(worse.number('mill.machineEffect.soldOut.tonnes')).toBeCloseTo(91_200, 9);
    expect(step(worse, 'soldOut', 'seconds')).toBeCloseTo(182_400, 6);
  });

  it('sells what 91 200 / 1.25 = 72 960 t serve: 18 240 fewer, at 800 less the 2 of their seconds', () => {
    const worse = soldOut(effect);

    expect(worse.number('mill.machineEffect.tonnesFewer.heavier')).toBeCloseTo(18_240, 9);
    expect(step(worse, 'soldOut', 'heavier')).toBeCloseTo(18_240 * 798, 5);
  });

  // (T/g) price - T v - F - u (T/g) d against what the reference sells for, worked out as a whole and not by steps.
  it('comes to the result of the year, whichever way the steps are taken', () => {
    const result = 72_960 * 800 - 91_200 * v - 200_000 - 0.04 * 72_960 * 50;

    expect(tonnes * 800 - whole(soldOut(effect))).toBeCloseTo(result, 4);
    expect(step(soldOut(effect), 'soldOut', 'left')).toBeCloseTo(whole(soldOut(effect)), 4);
  });

  it('sells for its own price: 10 more on every tonne that counts', () => {
    const dearer = soldOut({ ...effect, 'mill.priceDifference': '10' });

    expect(whole(dearer) - whole(soldOut(effect))).toBeCloseTo(-10 * 72_960, 5);
  });

  it('gains where it runs faster: 2 000 t more', () => {
    const fast = soldOut({ 'mill.machine.speed': '102' });

    expect(whole(fast) - whole(soldOut())).toBeCloseTo(-2000 * (800 - v), 5);
  });
});

describe('a machine that orders limit', () => {
  it('runs 6 000 x 0.05 / 0.95 h more at 95 % speed, at 300 each', () => {
    const slow = limited({ 'mill.machine.speed': '95' });

    expect(slow.number('mill.machineEffect.extraHours.slower')).toBeCloseTo(315.789474, 6);
    expect(whole(slow) - whole(limited())).toBeCloseTo(94_736.842105, 5);
    expect(step(slow, 'ordersLimited', 'slower')).toBeCloseTo(94_736.842105, 5);
  });

  it('runs for breaks at the speed it has: 6 000 x 0.04 / 0.912 h', () => {
    const both = limited({ 'mill.machine.speed': '95', 'mill.machine.time': '96' });

    expect(step(both, 'ordersLimited', 'breaks')).toBeCloseTo((300 * 240) / 0.912, 5);
  });

  it('sells 4 % of all orders as second quality: 200 000', () => {
    expect(step(limited(effect), 'ordersLimited', 'seconds')).toBeCloseTo(200_000, 6);
  });

  it('makes 25 000 t more for the same orders, in 6 000 x 0.25 / 0.912 h', () => {
    expect(step(limited(effect), 'ordersLimited', 'heavier')).toBeCloseTo(25_000 * v + (300 * 1500) / 0.912, 4);
  });

  // T0 g v + F + (H - H0) hour + u T0 d with H = H0 g/(f e).
  it('comes to the cost of the year', () => {
    const hours = 6000 * (1.25 / 0.912 - 1);
    const cost = 125_000 * v + 200_000 + hours * 300 + 200_000;

    expect(limited(effect).number('mill.machineEffect.extraHours')).toBeCloseTo(hours, 8);
    expect(whole(limited(effect))).toBeCloseTo(cost, 4);
    expect(step(limited(effect), 'ordersLimited', 'left')).toBeCloseTo(cost, 4);
  });

  it('has 8 784 - 6 000 x 1.25 / 0.912 h left, and cannot make the orders where fewer could be run', () => {
    const short = limited({ ...effect, 'machine.hoursAvailable': '8000' });

    expect(limited(effect).number('mill.machineEffect.hoursLeft')).toBeCloseTo(8784 - 8223.684211, 5);
    expect(short.outcome('mill.cost.total')).toBeInstanceOf(Failure);
    expect(short.number('other.cost.total')).toBeCloseTo(v, 9);
    // Sold out, the same machine loses tonnes instead.
    expect(soldOut({ ...effect, 'machine.hoursAvailable': '8000' }).number('mill.cost.total')).toBeGreaterThan(v);
  });

  it('needs no price of the product', () => {
    const { 'product.price': _, ...inputs } = mill.model.case.inputs;
    const without = evaluated({ ...mill.model.case, inputs });

    expect(whole(without.withChanges(effect))).toBeCloseTo(whole(limited(effect)), 6);
  });
});

it('takes a contribution for a price: what a tonne of the reference brings over its costs', () => {
  const { 'product.price': _, ...inputs } = mill.model.case.inputs;
  const given = { value: '300', unit: 'EUR/t', status: 'invented' } as const;
  const by = evaluated({ ...mill.model.case, inputs: { ...inputs, 'product.contribution': given } });

  expect(
    by.withChanges({ 'machine.soldOut': '1', 'mill.machine.speed': '95' }).number('mill.machineEffect.soldOut.slower'),
  ).toBeCloseTo(5000 * 300, 5);
});

it('charges hourly charges that stop with the machine for every extra hour', () => {
  const charges = [
    { id: 'shift', label: 'Shift', behaviour: 'per hour', avoidable: true, nature: 'market' },
    { id: 'lease', label: 'Lease', behaviour: 'per hour', avoidable: false, nature: 'market' },
  ] as const;
  const staffed = evaluated(
    smallCase({
      stages: [{ id: 'slush', like: 'pumps' }],
      route: { charges },
      figures: {
        'product.hours': '6000 h/a',
        'machine.extraHour': '300 EUR/h',
        'mill.charge.shift': '100 EUR/h',
        'mill.charge.lease': '70 EUR/h',
        'mill.machine.speed': '100 %',
      },
    }),
  );
  const slow = staffed.withChanges({ 'mill.machine.speed': '80' });

  // 6 000 x 0.2 / 0.8 = 1 500 h at 300 + 100.
  expect(slow.number('mill.machineEffect.ordersLimited.slower')).toBeCloseTo(600_000, 6);
});
