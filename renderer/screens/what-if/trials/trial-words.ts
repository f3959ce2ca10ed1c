import type { TrialSummary } from '../../../../src/index.ts';
import { chanceOf100 } from './chance-of-100.ts';
import type { ResultFigures } from './result-figures.ts';
import { winningChance } from './winning-chance.ts';

/** Words and figures of a sentence in turn; figures are set as results. */
export interface Part {
  readonly text: string;
  readonly isFigure: boolean;
}

const words = (text: string): Part => ({ text, isFigure: false });
const figure = (text: string): Part => ({ text, isFigure: true });

/** "How sure: recovered is cheaper in", after which stands how often. */
export function question(summary: TrialSummary, { other, isCarbon, kind }: ResultFigures): string {
  if (summary.drawn.length === 0) return 'How sure: nothing is said to be uncertain';
  const result = summary.results[0]?.id;
  if (kind === 'present value') return 'How sure: the plan earns more than it costs in';
  const wins = isCarbon ? 'emits less' : 'is cheaper';
  const apart = result === 'difference.withoutPolicy' ? ', policy left out,' : '';
  return `How sure: ${other} ${wins}${apart} in`;
}

/** How often the route compared wins; "" where nothing was drawn, since one outcome alone has no chance. */
export function answer(summary: TrialSummary, figures: ResultFigures): string {
  return summary.drawn.length === 0 ? '' : chanceOf100(winningChance(summary, figures));
}

/**
 * What one has to reckon with at either end. A difference is told in words that need no sign: below nothing it is a saving of the route
 * compared, and the tenth percentile is the better end.
 */
export function tailSentence({ results }: TrialSummary, figures: ResultFigures): readonly Part[] {
  const [, p10 = Number.NaN, , p90 = Number.NaN] = results[0]?.percentiles ?? [];
  if (Number.isNaN(p10)) return [words('No trial could be worked out.')];
  return figures.kind === 'difference' ? savedOrLost(p10, p90, figures) : lessOrMore(p10, p90, figures);
}

function lessOrMore(low: number, high: number, { signed, unit }: ResultFigures): readonly Part[] {
  return [
    words('One chance in ten of less than '),
    figure(signed(low)),
    words(', one in ten of more than '),
    figure(signed(high)),
    words(` ${unit}.`),
  ];
}

function savedOrLost(better: number, worse: number, { isCarbon, size, unit }: ResultFigures): readonly Part[] {
  const [save, lose] = isCarbon ? ['to spare', 'to add'] : ['to save', 'to lose'];
  const first = better < 0 ? `${save} more than` : `${lose} less than`;
  const second = worse < 0 ? `${save} less than` : `${lose} more than`;
  return [
    words(`One chance in ten ${first} `),
    figure(size(better)),
    words(`; one in ten ${second} `),
    figure(size(worse)),
    words(` ${unit}.`),
  ];
}

/** The picture in one sentence, for those who do not see it. */
export function pictureSentence(summary: TrialSummary, words: ResultFigures, shows: 'bars' | 'curve'): string {
  const [, p10 = Number.NaN, p50 = Number.NaN, p90 = Number.NaN] = summary.results[0]?.percentiles ?? [];
  const kind = shows === 'bars' ? 'Histogram' : 'Cumulative curve';
  const sure = question(summary, words).replace('How sure: ', '');
  const middle = `Half of the trials lie below ${words.signed(p50)} ${words.unit}`;
  const most = `eight in ten lie from ${words.signed(p10)} to ${words.signed(p90)}`;
  return `${kind}: ${sure} ${answer(summary, words)}. ${middle}; ${most}.`.replace(' .', '.');
}
