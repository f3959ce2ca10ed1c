import { type Quantity, constant } from '../../kernel/expression/quantity.ts';
import { type ByYear, eachYearOnce } from './by-year.ts';
import { type PlanSheet, planInput } from './plan-sheet.ts';

/** How much of a year the new line runs, and how much of the planned recovered stock it makes. */
export interface Running {
  /** Share of the year after the start: what it costs to have the line is paid for that long. */
  readonly on: (year: number) => Quantity;
  /** Share of the year's planned recovered stock that is made; pulp fills the rest. */
  readonly made: (year: number) => Quantity;
  /** How much of the first year of operation lies in a year: what happens once, at the start, falls there. Null where none of it can. */
  readonly begun: ByYear;
}

const [zero, one] = [constant('0'), constant('1')];
/** Years of operation whose share always stands among the inputs; later ones are there where somebody gives them. */
const usualRampYears = 3;
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
  const ramp = rampOf(sheet);
  const lastRamp = Math.max(0, ...ramp.map(({ place }) => place + 1));
  const availability = planInput(sheet, 'availability', 'Availability of the new line', '1', {
    value: '100',
    low: '90',
    entry: '%',
  });
  /** Distance of a year of the plan from the begin of operation, in years. */
  const since = (year: number): Quantity => constant(String(year - plan.operatesFrom)).minus(late);
  const isSettled = (year: number): boolean => year > plan.operatesFrom + longestDelay;
  /** How much of a year of operation, counted from 0, lies in a year of the plan. */
  const overlap = (year: number, place: number): Quantity => {
    const apart = since(year).minus(constant(String(place)));
    return between(one.minus(apart.greaterOf(zero.minus(apart))));
  };
  const on = eachYearOnce((year: number): Quantity => {
    if (year < plan.operatesFrom) return zero;
    return isSettled(year) ? one : between(since(year).plus(one));
  });
  const made = eachYearOnce((year: number): Quantity => {
    if (year < plan.operatesFrom) return zero;
    const whole = on(year);
    if (year > plan.operatesFrom + longestDelay + lastRamp) return whole.times(availability);
    const missing = ramp.map(({ place, share }) => share.complement().times(overlap(year, place)));
    return missing.reduce((sum, each) => sum.minus(each), whole).times(availability);
  });
  const begun = eachYearOnce((year: number): Quantity | null =>
    year < plan.operatesFrom || isSettled(year) ? null : overlap(year, 0),
  );
  return { on, made, begun };
}

/** Share of the planned stock that is made in each year of operation, counted from 0; years that are not there make all of it. */
function rampOf(sheet: PlanSheet): readonly { readonly place: number; readonly share: Quantity }[] {
  const { plan, sheet: model } = sheet;
  const longest = Math.max(usualRampYears, plan.years - plan.operatesFrom + 1);
  return Array.from({ length: longest }, (_, place) => place).flatMap((place) => {
    const year = String(place + 1);
    if (place >= usualRampYears && !model.isGiven(`investment.ramp.${year}`)) return [];
    const label = `Planned recovered stock made in year ${year} of operation`;
    return [{ place, share: planInput(sheet, `ramp.${year}`, label, '1', { value: '100', low: '60', entry: '%' }) }];
  });
}

function between(share: Quantity): Quantity {
  return share.greaterOf(zero).lesserOf(one);
}
