import type { TrialSummary } from '../../../../src/index.ts';
import { taxOfYears } from '../../../../src/wording/drawing-phrase.ts';
import { formatNumber } from '../../../../src/wording/number-format.ts';
import type { NumberStyle } from '../../../numbers/number-style.ts';

type Drawn = TrialSummary['drawn'][number];

/** What was drawn, and over how long: the same trials over one year or over ten tell quite different stories. */
export function drawnWords(summary: TrialSummary, numbers: NumberStyle): string {
  return [usualWords(summary), yearWords(summary, numbers)].filter((words) => words !== '').join('; ');
}

function usualWords({ isUsual, drawn }: TrialSummary): string {
  if (!isUsual) return '';
  const inputs = drawn.length === 1 ? '1 shared input is' : `${String(drawn.length)} shared inputs are`;
  return `nobody has said what is uncertain: usual ranges of ${inputs} drawn`;
}

function yearWords({ drawn: all, years, isPresentValue }: TrialSummary, numbers: NumberStyle): string {
  const drawn = all.filter(({ reaches }) => reaches);
  const yearly = drawn.filter((each) => each.drawn === 'yearly');
  if (drawn.length === 0) return all.length === 0 ? 'nothing is drawn' : 'nothing that is drawn moves it';
  if (yearly.length === 0)
    return isPresentValue ? 'everything drawn once for the plan' : 'everything drawn once, all years alike';
  if (years === 1) return 'one year';
  const rest = yearly.length < drawn.length ? '; the rest once' : '';
  // Years of a plan are counted from 0.
  const whole = isPresentValue ? `years 0 to ${String(years - 1)} of the plan` : `mean of ${String(years)} years`;
  const tax = isPresentValue ? `; ${taxOfYears}` : '';
  return `${whole}; ${whoYearly(drawn, yearly, numbers)} anew each year, ${carried(yearly, numbers)}${rest}${tax}`;
}

/** "prices" where those drawn each year are all the prices there are and nothing else. */
function whoYearly(drawn: readonly Drawn[], yearly: readonly Drawn[], { currency }: NumberStyle): string {
  const prices = drawn.filter(({ unit }) => unit.startsWith(`${currency}/`) && unit !== `${currency}/a`);
  const isPrices = prices.length === yearly.length && prices.every((each) => each.drawn === 'yearly');
  return isPrices ? 'prices' : `${String(yearly.length)} of ${String(drawn.length)} inputs`;
}

function carried(yearly: readonly Drawn[], { locale }: NumberStyle): string {
  const kept = yearly.map(({ persistence }) => persistence);
  const [least, most] = [Math.min(...kept), Math.max(...kept)];
  if (most === 0) return 'nothing of a departure carried over';
  const text = (value: number): string => formatNumber(value, { locale, significant: 2 });
  return `${least === most ? text(least) : `${text(least)} to ${text(most)}`} of a departure carried over`;
}

/** What has to be known before the trials are believed; none as a rule. */
export function warningsOf(
  { repaired, fading, failed, trials }: TrialSummary,
  { locale }: NumberStyle,
): readonly string[] {
  const count = (value: number): string => formatNumber(value, { locale, decimals: 0 });
  return [
    ...(repaired === null
      ? []
      : [
          `The correlations given cannot all be true together; they were moved by up to ${formatNumber(repaired, { locale, significant: 2 })}.`,
        ]),
    ...(fading === 0
      ? []
      : [
          `${count(fading)} of the correlations join inputs that are carried from year to year differently: they hold fully in the first year only.`,
        ]),
    ...(failed === 0 ? [] : [`${count(failed)} of ${count(trials)} trials could not be worked out and were left out.`]),
  ];
}
