import type { Spread, TrialSummary } from '../../../../src/index.ts';
import { formatNumber } from '../../../../src/wording/number-format.ts';
import type { NumberStyle } from '../../../numbers/number-style.ts';
import { routeWords } from '../tornado/result-words.ts';

/** The result that was drawn, in the words and figures it is shown with. */
export interface ResultFigures {
  readonly isCarbon: boolean;
  /** "€ a tonne", said after a figure. */
  readonly unit: string;
  readonly decimals: number;
  readonly base: string;
  readonly other: string;
  /** A difference with its sign. */
  readonly signed: (value: number) => string;
  /** How large, whatever the sign; also costs, deviations and errors. */
  readonly size: (value: number) => string;
}

const mostDecimals = 6;

/** What was drawn, not what is asked for by now: an older answer stays on the page until the newer one comes. */
export function resultFigures(summary: TrialSummary, spread: Spread, numbers: NumberStyle): ResultFigures {
  const [result] = summary.results;
  const isCarbon = result?.id.startsWith('difference.footprint.') === true;
  const decimals = decimalsFor(result?.deviation ?? Number.NaN);
  const form = { locale: numbers.locale, decimals };
  return {
    isCarbon,
    unit: isCarbon ? 'kg CO2e a tonne' : `${numbers.symbol} a tonne`,
    decimals,
    ...routeWords(spread),
    signed: (value) => formatNumber(value, { ...form, sign: true }),
    size: (value) => formatNumber(Math.abs(value), form),
  };
}

/** Two digits of the spread are as many as an estimate of it has meaning in; what does not spread is written to the cent. */
export function decimalsFor(deviation: number): number {
  if (!(deviation > 0)) return 2;
  return Math.min(mostDecimals, Math.max(0, 1 - Math.floor(Math.log10(deviation))));
}
