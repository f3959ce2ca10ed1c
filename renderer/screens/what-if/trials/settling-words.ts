import type { TrialSummary } from '../../../../src/index.ts';
import { formatNumber } from '../../../../src/wording/number-format.ts';
import type { NumberStyle } from '../../../numbers/number-style.ts';
import { decimalsFor, type ResultFigures } from './result-figures.ts';

/** How well the trials know the mean and the chance: by how much another set of as many trials would typically come out elsewhere. */
export function settlingWords(summary: TrialSummary, { unit, sign }: ResultFigures, { locale }: NumberStyle): string {
  const [result] = summary.results;
  if (result === undefined || Number.isNaN(result.mean)) return 'No trial could be worked out.';
  const { mean, standardError } = result;
  const decimals = decimalsFor(standardError);
  const counted = formatNumber(summary.trials - summary.failed, { locale, decimals: 0 });
  const told = formatNumber(mean, { locale, decimals, sign });
  if (standardError === 0) return `All ${counted} trials come to ${told} ${unit}.`;
  const error = formatNumber(standardError, { locale, decimals });
  const chance = formatNumber(summary.belowNothing.standardError * 100, { locale, significant: 2 });
  return `After ${counted} trials the mean is ${told} ${unit}, known to ${error} either way (one standard error); the chance is known to ${chance} of 100.`;
}
