import type { PlanResults } from '../../../src/index.ts';
import { formatNumber } from '../../../src/wording/number-format.ts';
import type { NumberStyle } from '../../numbers/number-style.ts';
import type { PlanScale } from './plan-scale.ts';
import { moneyWords, turningYear } from './plan-sentences.ts';

/** The picture of the flows in one sentence, for those who do not see it. */
export function pictureSentence(results: PlanResults, scale: PlanScale, numbers: NumberStyle): string {
  const { payback, discountedPayback, cumulative, calendar } = results;
  const lowest = Math.min(...cumulative);
  const turn = (years: number | null): string =>
    years === null
      ? 'never'
      : `after ${formatNumber(years, { locale: numbers.locale, decimals: 1 })} years, in ${turningYear(results, years)}`;
  const last = cumulative.at(-1) ?? NaN;
  return (
    `Cash flow of each year from ${calendar[0] ?? ''} to ${calendar.at(-1) ?? ''} and its running sum: ` +
    `it falls to ${signed(lowest, scale, numbers)}, is paid back ${turn(payback)}, with interest counted ${turn(discountedPayback)}, ` +
    `and ends at ${signed(last, scale, numbers)}.`
  );
}

function signed(value: number, scale: PlanScale, numbers: NumberStyle): string {
  return `${value < 0 ? 'minus ' : ''}${moneyWords(Math.abs(value), scale, numbers)}`;
}
