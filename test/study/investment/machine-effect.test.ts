import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { type OpenCase, changeInput, openCase } from '../../../src/index.ts';
import { planRowId } from '../../../src/paper/investment/investment.ts';
import { valueOf } from '../../examples/demonstration.ts';

const plan = valueOf(openCase(readFileSync(new URL('../../../examples/plan.tonne', import.meta.url), 'utf8')));
const withFigures = (figures: Readonly<Record<string, string>>): OpenCase =>
  Object.entries(figures).reduce((open, [id, typed]) => valueOf(changeInput(open, id, typed)), plan);

// The plan is in real money and operates from year 2 without delay: 70 % of the recovered stock is made in the first year of operation, 92 %
// in the second, all of it then, at 97 % availability. A machine that orders limit runs 2 % of 98 % more hours, at 400 each.
it('lowers the saving of each year of a plan with the share of recovered stock that is made', () => {
  const slow = withFigures({ 'recovered.machine.speed': '98', 'machine.extraHour': '400' });
  const effect = (plan.values.number('product.hours') * 0.02 * 400) / 0.98;
  const lost = (year: number): number =>
    plan.values.number(planRowId('saving', year)) - slow.values.number(planRowId('saving', year));

  expect(slow.values.number('difference.machineEffect.ordersLimited.left')).toBeGreaterThan(
    slow.values.number('difference.machineEffect.costsAlone'),
  );
  expect(lost(2)).toBeCloseTo(effect * 0.7 * 0.97, 3);
  expect(lost(3)).toBeCloseTo(effect * 0.92 * 0.97, 3);
  expect(lost(6)).toBeCloseTo(effect * 0.97, 3);
  expect(slow.values.number('investment.npv')).toBeLessThan(plan.values.number('investment.npv'));
});
