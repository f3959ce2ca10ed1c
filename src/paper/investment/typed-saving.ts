import { type ByYear, eachYearOnce } from './by-year.ts';
import { unitOf } from './capital.ts';
import { type PlanSheet, yearInput } from './plan-sheet.ts';

/** Savings of single years that somebody gave, in the money of the plan; null in years without one. They stand as they are, ramp or not. */
export interface TypedSavings {
  /** Takes the place of what the statements save. */
  readonly instead: ByYear;
  /** Comes beside it. */
  readonly beside: ByYear;
}

export function typedSavings(sheet: PlanSheet): TypedSavings {
  const given = (id: string, label: string): ByYear =>
    eachYearOnce((year) => {
      if (year < sheet.plan.operatesFrom) return null;
      const money = yearInput(sheet, id, label, year, unitOf(sheet), { allowed: {} });
      return money === null ? null : sheet.inMoney(money, year);
    });
  return {
    instead: given('savingInstead', 'Saving given in place of the computed one'),
    beside: given('savingBeside', 'Further saving given'),
  };
}
