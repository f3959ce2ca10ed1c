import type { TrialSummary } from '../study/uncertainty/trial-summary.ts';
import { formatNumber } from './number-format.ts';

/** Of a plan whose years have prices of their own: losses and writing off are those of a plan that has the year's prices throughout. */
export const taxOfYears = 'each year taxed as if the years before had had its prices';

/** What one trial is, in words that stand on every picture of trials: how many years, and what is drawn how often. */
export function drawingPhrase(
  { years, drawn: all, isPresentValue }: Pick<TrialSummary, 'years' | 'drawn' | 'isPresentValue'>,
  locale: string,
): string {
  const drawn = all.filter(({ reaches }) => reaches);
  if (drawn.length === 0) return 'nothing that is drawn moves it';
  if (drawn.every((each) => each.drawn === 'once'))
    return isPresentValue ? 'every input drawn once for the plan' : 'one year, every input drawn once';
  const yearly = drawn.filter((each) => each.drawn === 'yearly');
  const carried = [...new Set(yearly.map(({ persistence }) => persistence))].sort((a, b) => a - b);
  const number = (value: number): string => formatNumber(value, { locale, significant: 3 });
  const range = [...new Set([carried[0] ?? 0, carried.at(-1) ?? 0])].map(number).join(' to ');
  const rest = yearly.length === drawn.length ? '' : ', the other inputs once';
  const subject = yearly.length === 1 ? '1 input' : `${String(yearly.length)} inputs`;
  const whole = isPresentValue ? `years 0 to ${String(years - 1)} of the plan` : `mean of ${String(years)} years`;
  const tax = isPresentValue ? `; ${taxOfYears}` : '';
  return `${whole}; ${subject} drawn anew each year with ${range} of a departure carried over${rest}${tax}`;
}
