import type { PlanResults } from '../../../src/index.ts';
import { formatNumber } from '../../../src/wording/number-format.ts';
import type { NumberStyle } from '../../numbers/number-style.ts';
import type { PlanScale } from './plan-scale.ts';

/** "€38.7 million". */
export function moneyWords(value: number, scale: PlanScale, { locale, symbol }: NumberStyle): string {
  const figure = formatNumber(value / scale.factor, { locale, decimals: scale.decimals });
  return `${/\p{L}$/u.test(symbol) ? `${symbol}\u00a0` : symbol}${figure} ${scale.word}`;
}

/** "5.88 %", with no more decimals than it has. */
export function rateText(rate: number, locale: string, decimals = 2): string {
  return `${formatNumber(Number((rate * 100).toFixed(decimals)), { locale })}\u00a0%`;
}

/** The calendar year in which a sum that turns after so many years from the first money turns; "" where it never does. */
export function turningYear(
  { flows, calendar }: Pick<PlanResults, 'flows' | 'calendar'>,
  years: number | null,
): string {
  if (years === null || !Number.isFinite(years)) return '';
  return calendar[firstMoney(flows) + Math.ceil(years)] ?? '';
}

/** The first year in which money flows. */
export function firstMoney(flows: readonly number[]): number {
  return Math.max(
    0,
    flows.findIndex((flow) => flow !== 0),
  );
}

/** "The new plant earns €38.7 million more than it costs, and is paid back during 2031." */
export function headline(results: PlanResults, scale: PlanScale, numbers: NumberStyle): string {
  const { npv } = results;
  if (!Number.isFinite(npv)) return 'What the new plant earns cannot be worked out yet.';
  const isNothing = Math.abs(npv / scale.factor) < 0.05;
  const money = moneyWords(Math.abs(npv), scale, numbers);
  if (isNothing) return `The new plant earns as much as it costs; it ${backWords(results)}.`;
  if (npv > 0) return `The new plant earns ${money} more than it costs, and ${backWords(results)}.`;
  const back = results.payback === null ? backWords(results) : `though, interest not counted, it ${backWords(results)}`;
  return `The new plant costs ${money} more than it earns, ${results.payback === null ? 'and ' : ''}${back}.`;
}

function backWords(results: PlanResults): string {
  const { payback, calendar } = results;
  if (payback === null) return `is never paid back by ${calendar.at(-1) ?? ''}`;
  if (payback === 0) return 'has nothing to be paid back';
  return `is paid back during ${turningYear(results, payback)}`;
}

/** "5.88 % real is 8 % nominal"; one rate where inflation is nothing. */
export function ratesSentence({ rates, plan }: Pick<PlanResults, 'rates' | 'plan'>, locale: string): string {
  const [real, nominal] = [rateText(rates.real, locale), rateText(rates.nominal, locale)];
  if (rates.inflation === 0) return `${nominal}, real and nominal, for inflation is nothing`;
  return plan.money === 'real' ? `${real} real is ${nominal} nominal` : `${nominal} nominal is ${real} real`;
}

/** In what money the plan is told. A present value is in money of the price year in either kind. */
export function moneySentence({ money }: PlanResults['plan'], priceYear: string): string {
  return money === 'real'
    ? `real, prices of ${priceYear}`
    : `nominal, money of each year; the present value in money of ${priceYear}`;
}

/** A later start and what it costs, from how far a start is usually late; "" where that is not known. */
export function lateSentence(
  results: PlanResults,
  late: { readonly figure: number; readonly high: number; readonly atHigh: number } | undefined,
  scale: PlanScale,
  numbers: NumberStyle,
): string {
  if (late === undefined || late.high <= late.figure || !Number.isFinite(results.npv)) return '';
  const lost = results.npv - late.atHigh;
  const months = formatNumber(late.high - late.figure, { locale: numbers.locale });
  const when = late.figure > 0 ? `A start another ${months} months late` : `A start ${months} months late`;
  const money = moneyWords(Math.abs(lost), scale, numbers);
  return lost < 0 ? `${when} spares ${money}.` : `${when} costs ${money}.`;
}
