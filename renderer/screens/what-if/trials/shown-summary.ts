import type { TrialSummary } from '../../../../src/index.ts';
import type { ResultWords } from '../tornado/result-words.ts';

/** Trials in the unit they are shown in: the results, their bars, how they settle, and the flows of bad years. Shares and draws stay as they are. */
export function shownSummary(summary: TrialSummary, { scale }: Pick<ResultWords, 'scale'>): TrialSummary {
  const all = (values: readonly number[]): readonly number[] => values.map((value) => value / scale);
  const { results, worst, histogram, convergence } = summary;
  return {
    ...summary,
    today: summary.today / scale,
    results: results.map((each) => ({
      ...each,
      mean: each.mean / scale,
      standardError: each.standardError / scale,
      deviation: each.deviation / scale,
      percentiles: all(each.percentiles),
    })),
    worst: worst === null ? null : { ...worst, year: all(worst.year), three: all(worst.three) },
    histogram: { ...histogram, from: histogram.from / scale, width: histogram.width / scale },
    convergence: convergence.map((stop) => ({
      ...stop,
      mean: stop.mean / scale,
      standardError: stop.standardError / scale,
    })),
  };
}
