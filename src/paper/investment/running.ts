import { type Quantity, constant } from '../../kernel/expression/quantity.ts';
import { eachYearOnce } from './by-year.ts';
import { type PlanSheet, planInput } from './plan-sheet.ts';

/** How much of a year the new line runs, and how much of the planned recovered stock it makes. */
export interface Running {
  /** Share of the year after the start: what it costs to have the line is paid for that long. */
  readonly on: (year: number) => Quantity;
  /** Share of the year's planned recovered stock that is made; pulp fills the rest. */
  readonly made: (year: number) => Quantity;
}

const [zero, one] = [constant('0'), constant('1')];
const rampYears = [1, 2, 3];
const longestDelay = 3;

/**
 * A late start moves the years of operation by parts of a year: a year of the plan holds so much of each year of operation as the two
 * overlap. Ramp-up and downtime replace fibre, not output, so that both only lower the recovered stock that is made.
 */
export function running(sheet: PlanSheet): Running {
  const { plan } = sheet;
  const late = planInput(sheet, 'delay', 'Start late by, months', '1', { most: '36', high: '12' }).dividedBy(
    constant('12'),
  );
  const ramp = rampYears.map((year) =>
    planInput(sheet, `ramp.${String(year)}`, `Planned recovered stock made in year ${String(year)} of operation`, '1', {
      value: '100',
      low: '60',
      entry: '%',
    }),
  );
  const availability = planInput(sheet, 'availability', 'Availability of the new line', '1', {
    value: '100',
    low: '90',
    entry: '%',
  });
  /** Distance of a year of the plan from the begin of operation, in years. */
  const since = (year: number): Quantity => constant(String(year - plan.operatesFrom)).minus(late);
  const isSettled = (year: number): boolean => year > plan.operatesFrom + longestDelay;
  const on = eachYearOnce((year: number): Quantity => {
    if (year < plan.operatesFrom) return zero;
    return isSettled(year) ? one : between(since(year).plus(one));
  });
  const made = (year: number): Quantity => {
    if (year < plan.operatesFrom) return zero;
    const whole = on(year);
    if (year > plan.operatesFrom + longestDelay + rampYears.length) return whole.times(availability);
    const missing = ramp.map((share, place) => {
      const apart = since(year).minus(constant(String(place)));
      const overlap = between(one.minus(apart.greaterOf(zero.minus(apart))));
      return share.complement().times(overlap);
    });
    return missing.reduce((sum, each) => sum.minus(each), whole).times(availability);
  };
  return { on, made };
}

function between(share: Quantity): Quantity {
  return share.greaterOf(zero).lesserOf(one);
}
