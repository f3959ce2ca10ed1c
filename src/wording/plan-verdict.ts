import type { Swing } from '../study/sensitivity.ts';
import type { PlanResults } from '../study/investment/plan-results.ts';
import { type TrialSummary, toldPercentiles } from '../study/uncertainty/trial-summary.ts';
import { estimateId } from '../study/investment/estimate-range.ts';
import { chanceText } from './chance-text.ts';
import { badYearSentence } from './bad-year-sentence.ts';
import { drawingPhrase } from './drawing-phrase.ts';
import { formatNumber } from './number-format.ts';
import { typedSentences } from './plan-words.ts';
import { sameProductPhrase } from './same-product-phrase.ts';
import { unitLabel } from './unit-label.ts';

/** What one must know to judge a plan, beside its results. */
export interface PlanDoubts {
  /** Swings of the present value, largest first. */
  readonly swings: readonly Swing[];
  /** Trials of the present value; null where none were drawn. */
  readonly trials: TrialSummary | null;
}

/** A plan in one paragraph: what is invested, what it returns, how sure, and what would undo it. `currency` is the code of the case. */
export function planVerdict(
  results: PlanResults,
  doubts: PlanDoubts,
  currency: string,
  locale: string,
  /** What is drawn, and bad years, are left out where they stand beside the paragraph. */
  { trialsStandBeside = false }: { readonly trialsStandBeside?: boolean } = {},
): string {
  return [
    spentSentence(results, currency, locale),
    estimateSentence(results, doubts, locale),
    ...typedSentences(results),
    returnSentence(results, currency, locale),
    sureSentence(results, doubts, currency, locale, trialsStandBeside),
    trialsStandBeside ? '' : badYearSentence(doubts.trials, currency, locale),
    undoSentence(results, doubts, locale),
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

/** How far the estimate may be out, and what that would leave of the present value. */
function estimateSentence(results: PlanResults, { swings }: PlanDoubts, locale: string): string {
  const { estimate, outlay } = results;
  const swing = swings.find(({ id }) => id === estimateId);
  if (estimate === null || swing === undefined || swing.figure === 0) return '';
  const whose = estimate.isOwn
    ? 'By the range given for it, it may come to'
    : `As an estimate of class ${estimate.class ?? ''} (AACE 18R-97, from memory) it may come to`;
  const spent = (percent: number): string => millions((outlay * percent) / swing.figure, locale);
  return `${whose} ${spent(estimate.low)} to ${spent(estimate.high)} million, which leaves ${millions(swing.atLow, locale)} to ${millions(swing.atHigh, locale)} of the present value.`;
}

function returnSentence(results: PlanResults, currency: string, locale: string): string {
  const { npv, discountedPayback } = results;
  const rate = rateWords(results, locale);
  if (!Number.isFinite(npv)) return 'Its present value cannot be worked out yet.';
  const word = npv >= 0 ? 'more' : 'less';
  const back =
    discountedPayback === null
      ? 'it is not paid back within the plan'
      : `it is paid back after ${formatNumber(discountedPayback, { locale, decimals: 1 })} years, interest counted`;
  return `At ${rateAsked(results, locale)} it returns ${millions(Math.abs(npv), locale)} million ${currency} ${word} than it costs; ${rate}; ${back}.`;
}

/** "5.88 % real (8.00 % nominal)"; one rate where inflation is nothing. */
function rateAsked({ rates, plan }: PlanResults, locale: string): string {
  const used = `${percent(rates.used, locale, 2)} ${plan.money}`;
  if (rates.inflation === 0) return used;
  return plan.money === 'real'
    ? `${used} (${percent(rates.nominal, locale, 2)} nominal)`
    : `${used} (${percent(rates.real, locale, 2)} real)`;
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
    : `it has ${String(told.length)} internal rates of return, ${listed(told)}, so none of them ranks it`;
}

function listed(words: readonly string[]): string {
  return words.length < 3 ? words.join(' and ') : `${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`;
}

/** The middle of the trials stands beside the chance: figures in force may lie near an end of what is drawn. */
function sureSentence(
  { estimate }: PlanResults,
  { trials }: PlanDoubts,
  currency: string,
  locale: string,
  trialsStandBeside: boolean,
): string {
  if (trials === null) return '';
  const middle = trials.results[0]?.percentiles[toldPercentiles.indexOf(50)] ?? NaN;
  const isLeftOut = estimate !== null && !trials.drawn.some(({ id }) => id === estimateId);
  const what = [
    ...(trialsStandBeside ? [] : [drawingPhrase(trials, locale)]),
    ...(isLeftOut ? ['the range of the estimate not among it'] : []),
  ];
  const whose = trials.isUsual
    ? 'of usual ranges of shared inputs, for nobody has said what is uncertain'
    : `of what is said to be uncertain${what.length === 0 ? '' : ` (${what.join('; ')})`}`;
  return `In trials ${whose}, it ends above nothing in ${chanceText(1 - trials.belowNothing.share, locale)} of 100; half of them end below ${millions(middle, locale)} million ${currency}.`;
}

const mostNamed = 3;

function undoSentence(results: PlanResults, { swings }: PlanDoubts, locale: string): string {
  const turning = swings.filter((swing) => swing.flips && !isTwin(swing.id, results)).slice(0, mostNamed);
  const isLoss = results.npv < 0;
  if (turning.length === 0)
    return isLoss
      ? 'No single input would rescue it within its usual range.'
      : 'No single input undoes it within its usual range.';
  const named = turning.map(
    ({ label, where, low, high, unit }) =>
      `${label}${where === '' ? '' : ` (${where})`}, ${formatNumber(low, { locale, significant: 4 })} to ${formatNumber(high, { locale, significant: 4 })}${unitLabel(unit) === '' ? '' : ` ${unitLabel(unit)}`}`,
  );
  return `What could ${isLoss ? 'rescue' : 'undo'} it, each within its usual range: ${named.join('; ')}.`;
}

/** Both routes run the same paper machine: a figure of it that moves in one route alone would turn nothing that could happen. */
function isTwin(id: string, { base, project }: PlanResults): boolean {
  return [base.id, project.id].some((route) => id.startsWith(`${route}.machine.`));
}

function conditions({ plan, rates, priceYear, rows, sameProduct }: PlanResults): readonly string[] {
  const isTaxed = rows.some(({ id, values }) => id === 'tax' && values.some((value) => value !== 0));
  const same = sameProductPhrase(sameProduct);
  const terms =
    plan.money === 'real'
      ? `Real terms, in money of ${priceYear}`
      : `Nominal terms, in the money of each year; the present value in money of ${priceYear}`;
  return [
    `${terms}; before financing${isTaxed ? ', after tax' : ''}${same === '' ? '' : `; if ${same}`}.`,
    rates.inflation === 0 ? 'General inflation is nothing, so real and nominal are the same.' : '',
  ];
}
