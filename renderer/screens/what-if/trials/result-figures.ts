import { npvId, type Spread, type TrialSummary } from '../../../../src/index.ts';
import { formatNumber } from '../../../../src/wording/number-format.ts';
import type { NumberStyle } from '../../../numbers/number-style.ts';
import { type ResultWords, resultWords, routeWords } from '../tornado/result-words.ts';

/** The result that was drawn, in the words and figures it is shown with. */
export interface ResultFigures extends Pick<ResultWords, 'kind' | 'sign' | 'winsBelow'> {
  readonly isCarbon: boolean;
  /** "€ a tonne", said after a figure. */
  readonly unit: string;
  readonly decimals: number;
  readonly base: string;
  readonly other: string;
  /** With its sign; only a difference has a plus. */
  readonly signed: (value: number) => string;
  /** A figure on an axis, with no more decimals than it has. */
  readonly tick: (value: number) => string;
  /** How large, whatever the sign; also costs, deviations and errors. */
  readonly size: (value: number) => string;
}

const mostDecimals = 6;

/** What was drawn, not what is asked for by now: an older answer stays on the page until the newer one comes. `summary` is as it is shown. */
export function resultFigures(summary: TrialSummary, spread: Spread, numbers: NumberStyle): ResultFigures {
  const [result] = summary.results;
  const isCarbon = result?.id.startsWith('difference.footprint.') === true;
  const { kind, sign, winsBelow, unit } = resultWords(result?.id ?? '', spread, numbers);
  const isPlan = result?.id === npvId;
  // Millions have a decimal at least, as on the page of the plan.
  const decimals = Math.max(isPlan ? 1 : 0, decimalsFor(result?.deviation ?? Number.NaN));
  const form = { locale: numbers.locale, decimals };
  return {
    kind,
    sign,
    winsBelow,
    isCarbon,
    unit: isPlan ? unit : isCarbon ? 'kg CO2e a tonne' : `${numbers.symbol} a tonne`,
    decimals,
    ...routeWords(spread),
    signed: (value) => formatNumber(value, { ...form, sign }),
    tick: (value) => formatNumber(value, { locale: numbers.locale, sign }),
    size: (value) => formatNumber(Math.abs(value), form),
  };
}

/** Two digits of the spread are as many as an estimate of it has meaning in; what does not spread is written to the cent. */
export function decimalsFor(deviation: number): number {
  if (!(deviation > 0)) return 2;
  return Math.min(mostDecimals, Math.max(0, 1 - Math.floor(Math.log10(deviation))));
}
