import { type TrialSummary, toldPercentiles } from '../study/uncertainty/trial-summary.ts';
import { chanceText } from './chance-text.ts';
import { formatNumber } from './number-format.ts';

/** What a present value hides: how bad single years of operation may be. "" where nothing was drawn. */
export function badYearSentence(trials: TrialSummary | null, currency: string, locale: string): string {
  const tenth = trials?.worst?.year[toldPercentiles.indexOf(10)] ?? NaN;
  if (trials === null || trials.worst === null || !Number.isFinite(tenth)) return '';
  const money = formatNumber(tenth / 1e6, { locale, decimals: 1 });
  const chance = chanceText(trials.worst.negative, locale);
  return `Its worst year of operation brings less than ${money} million ${currency} in one trial of ten; ${chance} of 100 trials have a year below nothing.`;
}
