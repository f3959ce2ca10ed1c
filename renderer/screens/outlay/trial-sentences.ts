import type { TrialSummary } from '../../../src/index.ts';
import { formatNumber } from '../../../src/wording/number-format.ts';
import { drawingPhrase } from '../../../src/wording/drawing-phrase.ts';
import type { PlanScale } from './plan-scale.ts';

/** Words and figures of a sentence in turn; figures are set as results. */
export interface Part {
  readonly text: string;
  readonly isFigure: boolean;
}

const words = (text: string): Part => ({ text, isFigure: false });
const figure = (text: string): Part => ({ text, isFigure: true });

/** What one has to reckon with: the tenth and ninetieth percentile of the present value. */
export function spreadSentence({ results, drawn }: TrialSummary, scale: PlanScale, locale: string): readonly Part[] {
  if (drawn.length === 0) return [words('Nothing is said to be uncertain, so that trials would all be alike.')];
  const [, low = NaN, , high = NaN] = results[0]?.percentiles ?? [];
  if (Number.isNaN(low)) return [words('No trial could be worked out.')];
  return [
    words('One chance in ten of a present value below '),
    figure(money(low, scale, locale)),
    words(` ${scale.word}, one in ten above `),
    figure(money(high, scale, locale)),
    words('.'),
  ];
}

/** Bad years of operation: the worst, the worst three running, and how often any falls below nothing. */
export function worstSentence({ worst, drawn }: TrialSummary, scale: PlanScale, locale: string): readonly Part[] {
  const [, year = NaN] = worst?.year ?? [];
  if (worst === null || drawn.length === 0 || Number.isNaN(year)) return [];
  const [, three = NaN] = worst.three;
  return [
    words('In one trial of ten the worst year brings less than '),
    figure(money(year, scale, locale)),
    ...(Number.isNaN(three)
      ? []
      : [words(', the worst three running less than '), figure(money(three, scale, locale))]),
    words('; a year of operation falls below nothing in '),
    figure(ofHundred(worst.negative)),
    words('.'),
  ];
}

/** "10,000 trials, seed 20261; every input drawn once for the plan". */
export function drawnSentence(summary: TrialSummary, locale: string): string {
  const { trials, seed, drawn, isUsual, failed } = summary;
  const count = (value: number): string => formatNumber(value, { locale, decimals: 0 });
  if (drawn.length === 0) return '';
  return [
    `${count(trials)} trials, seed ${String(seed)}`,
    drawingPhrase(summary, locale),
    ...(isUsual ? ['usual ranges, for nobody has said what is uncertain'] : []),
    ...(failed > 0 ? [`${count(failed)} could not be worked out`] : []),
  ].join('; ');
}

function money(value: number, { factor, decimals }: PlanScale, locale: string): string {
  return formatNumber(value / factor, { locale, decimals });
}

function ofHundred(share: number): string {
  const of100 = Math.round(share * 100);
  if (share > 0 && of100 === 0) return 'fewer than 1 of 100';
  return share < 1 && of100 === 100 ? 'more than 99 of 100' : `${String(of100)} of 100`;
}
