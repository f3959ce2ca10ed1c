import type { Swing } from '../study/sensitivity.ts';
import type { PlanResults } from '../study/investment/plan-results.ts';
import { formatNumber } from './number-format.ts';
import { unitLabel } from './unit-label.ts';

/** What one must know to judge a plan, beside its results. */
export interface PlanDoubts {
  /** Swings of the present value, largest first. */
  readonly swings: readonly Swing[];
  /** Share of trials in which the present value is above nothing; null where none were drawn. */
  readonly aboveNothing: number | null;
}

/** A plan in one paragraph: what is invested, what it returns, how sure, and what would undo it. `currency` is the code of the case. */
export function planVerdict(results: PlanResults, doubts: PlanDoubts, currency: string, locale: string): string {
  return [
    spentSentence(results, currency, locale),
    returnSentence(results, currency, locale),
    sureSentence(doubts, locale),
    undoSentence(doubts, locale),
    ...conditions(results),
  ]
    .filter((sentence) => sentence !== '')
    .join(' ');
}

export function millions(value: number, locale: string, decimals = 1): string {
  return formatNumber(value / 1e6, { locale, decimals });
}

export function percent(share: number, locale: string, decimals = 1): string {
  return `${formatNumber(share * 100, { locale, decimals })} %`;
}

function spentSentence(
  { base, project, outlay, plan, calendar }: PlanResults,
  currency: string,
  locale: string,
): string {
  const last = String(Number(plan.start) + plan.years);
  return `To change from ${base.label} to ${project.label} takes ${millions(outlay, locale)} million ${currency} of capital; the plan runs from ${calendar[0] ?? ''} to ${last}.`;
}

function returnSentence(results: PlanResults, currency: string, locale: string): string {
  const { npv, rates, discountedPayback } = results;
  const rate = rateWords(results, locale);
  if (!Number.isFinite(npv)) return 'Its present value cannot be worked out yet.';
  const word = npv >= 0 ? 'more' : 'less';
  const back =
    discountedPayback === null
      ? 'it is not paid back within the plan'
      : `it is paid back after ${formatNumber(discountedPayback, { locale, decimals: 1 })} years, interest counted`;
  return `At ${percent(rates.used, locale, 2)} it returns ${millions(Math.abs(npv), locale)} million ${currency} ${word} than it costs; ${rate}; ${back}.`;
}

/** Every internal rate of return by name, or that there is none. */
export function rateWords({ internal }: Pick<PlanResults, 'internal'>, locale: string): string {
  if (internal === null) return 'its internal rate cannot be worked out yet';
  if (internal.always) return 'it has no flows, so every rate is an internal rate of return';
  const told = internal.rates.map(
    ({ rate, isMeaningless }) => `${percent(rate, locale, 2)}${isMeaningless ? ' (meaningless)' : ''}`,
  );
  if (told.length === 0) return 'it has no internal rate of return';
  return told.length === 1
    ? `its internal rate of return is ${told[0] ?? ''}`
    : `it has ${String(told.length)} internal rates of return, ${told.join(' and ')}, so none of them ranks it`;
}

function sureSentence({ aboveNothing }: PlanDoubts, locale: string): string {
  if (aboveNothing === null) return '';
  return `It ends above nothing in ${formatNumber(aboveNothing * 100, { locale, decimals: 0 })} of 100 trials.`;
}

const mostNamed = 3;

function undoSentence({ swings }: PlanDoubts, locale: string): string {
  const turning = swings.filter(({ flips }) => flips).slice(0, mostNamed);
  if (turning.length === 0) return 'No single input undoes it within its usual range.';
  const named = turning.map(
    ({ label, where, low, high, unit }) =>
      `${label}${where === '' ? '' : ` (${where})`}, ${formatNumber(low, { locale, significant: 4 })} to ${formatNumber(high, { locale, significant: 4 })}${unitLabel(unit) === '' ? '' : ` ${unitLabel(unit)}`}`,
  );
  return `What could turn it, each within its usual range: ${named.join('; ')}.`;
}

function conditions({ plan, rates }: PlanResults): readonly string[] {
  const terms =
    plan.money === 'real' ? 'Real terms, in money of the price year' : 'Nominal terms, in the money of each year';
  return [
    `${terms}; before financing; if both routes make the same product.`,
    rates.inflation === 0 ? 'General inflation is nothing, so real and nominal are the same.' : '',
  ];
}
