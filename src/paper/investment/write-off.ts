import { type Quantity, constant, total } from '../../kernel/expression/quantity.ts';
import { type ByYear, eachYearOnce, sumOf } from './by-year.ts';
import type { Capital } from './capital.ts';
import { type PlanSheet, planInput, yearInput } from './plan-sheet.ts';

/** What is written off in each year and what is left on the books at the end, in the money of each year (nominal). */
export interface WriteOff {
  readonly of: ByYear;
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
    above: '0',
  });
  const parts = [mainWriteOff(sheet, basis, life)];
  const sums = [basis];
  for (const year of years) {
    const money = replaced(year);
    if (money === null) continue;
    const sum = sheet.nominal(money, year);
    sums.push(sum);
    parts.push(even(sum, life, Math.max(year + 1, plan.operatesFrom)));
  }
  const of = eachYearOnce((year) => {
    const written = sumOf(parts.map((part) => part(year)));
    if (written === null) return null;
    return sheet.sheet.define(
      `investment.writeOff.${String(year)}`,
      `Written off, ${String(Number(plan.start) + year)}`,
      'EUR',
      written,
      { where: sheet.where, note: 'In the money of the year, as a tax office sees it.' },
    );
  });
  const unit = sheet.sheet.case.currency;
  const written = total(
    years.flatMap((year) => of(year) ?? []),
    unit,
  );
  return { of, left: total(sums, unit).minus(written) };
}

/** A sum spread evenly over a life from a year on; the last year takes what is left of a broken one. */
function even(sum: Quantity, life: Quantity, from: number): ByYear {
  const share = sum.dividedBy(life);
  return (year) => {
    if (year < from) return null;
    const remaining = year === from ? life : life.minus(constant(String(year - from)));
    return share.times(remaining.greaterOf(zero).lesserOf(one));
  };
}

function mainWriteOff(sheet: PlanSheet, basis: Quantity, life: Quantity): ByYear {
  const { plan, years } = sheet;
  if (plan.depreciation === 'straight line') return even(basis, life, plan.operatesFrom);
  if (plan.depreciation === 'table')
    return (year) =>
      year < plan.operatesFrom
        ? null
        : (yearInput(sheet, 'writtenOff', 'Written off of the capital', year, '1', { entry: '%' })?.times(basis) ??
          null);
  // The book value falls by a fixed share a year, and evenly over what is left of the life as soon as that takes more.
  const factor = planInput(sheet, 'decliningFactor', 'Declining balance, times the even rate', '1', {
    value: '2',
    low: '1',
    high: '3',
    most: '5',
    above: '0',
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
