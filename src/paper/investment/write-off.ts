import { type Quantity, constant } from '../../kernel/expression/quantity.ts';
import type { Capital } from './capital.ts';
import { type PlanSheet, planInput, yearInput } from './plan-sheet.ts';

/** What is written off in each year and what is left on the books at the end, in the money of each year (nominal). */
export interface WriteOff {
  readonly of: (year: number) => Quantity | null;
  readonly left: Quantity;
}

const [zero, one] = [constant('0'), constant('1')];

/** Writing off begins with the first planned year of operation. A replacement is written off evenly from the year after it. */
export function writeOff(sheet: PlanSheet, { basis, replaced }: Capital): WriteOff {
  const { plan, years } = sheet;
  const life = planInput(sheet, 'writeOffYears', 'Written off over, years', '1', {
    value: '10',
    low: '5',
    high: '25',
    most: '50',
  });
  const main = mainWriteOff(sheet, basis, life);
  const added = years.flatMap((year) => {
    const sum = replaced(year);
    const from = Math.max(year + 1, plan.operatesFrom);
    return sum === null ? [] : [{ sum: sum.dividedBy(sheet.deflated(year)), of: (at: number) => even(life, from, at) }];
  });
  const of = (year: number): Quantity | null => {
    const parts = added.map(({ sum, of: share }) => share(year)?.times(sum) ?? null);
    return [main(year), ...parts].reduce(
      (sum, part) => (sum === null ? part : part === null ? sum : sum.plus(part)),
      null,
    );
  };
  const written = years.flatMap((year) => of(year) ?? []);
  const sums = added.map(({ sum }) => sum);
  const whole = sums.reduce((all, sum) => all.plus(sum), basis);
  return { of, left: written.reduce((left, each) => left.minus(each), whole) };
}

/** Share of an even write-off over a life that falls into a year; the last year takes what is left of a broken one. */
function even(life: Quantity, from: number, year: number): Quantity | null {
  if (year < from) return null;
  const remaining = life.minus(constant(String(year - from)));
  return remaining.greaterOf(zero).lesserOf(one).dividedBy(life);
}

function mainWriteOff(sheet: PlanSheet, basis: Quantity, life: Quantity): (year: number) => Quantity | null {
  const { plan, years } = sheet;
  if (plan.depreciation === 'straight line') return (year) => even(life, plan.operatesFrom, year)?.times(basis) ?? null;
  if (plan.depreciation === 'table')
    return (year) =>
      year < plan.operatesFrom
        ? null
        : (yearInput(sheet, 'writtenOff', 'Written off of the capital', year, '1', '%')?.times(basis) ?? null);
  // The book value falls by a fixed share a year, and evenly over what is left of the life as soon as that takes more.
  const factor = planInput(sheet, 'decliningFactor', 'Declining balance, times the even rate', '1', {
    value: '2',
    low: '1',
    high: '3',
    most: '5',
  });
  const amounts: (Quantity | null)[] = [];
  let book = basis;
  for (const year of years) {
    if (year < plan.operatesFrom) {
      amounts.push(null);
      continue;
    }
    const remaining = life.minus(constant(String(year - plan.operatesFrom))).greaterOf(one);
    const declining = book.times(factor).dividedBy(life);
    const amount = declining.greaterOf(book.dividedBy(remaining)).lesserOf(book);
    amounts.push(amount);
    book = book.minus(amount);
  }
  return (year) => amounts[year] ?? null;
}
