import { correlate } from '../../kernel/random/correlation.ts';
import { fillNormalScores } from '../../kernel/random/normal-scores.ts';
import { laneCount } from '../../kernel/tape/blocked.ts';
import type { TrialPlan } from './trial-plan.ts';

/** Normal scores of one block of trials: `scores[(year * inputs + input) * laneCount + lane]`. Used again from block to block. */
export interface BlockScores {
  readonly scores: Float64Array;
  readonly independent: Float64Array;
  readonly correlated: Float64Array;
}

export function blockScores({ drawn, years }: TrialPlan): BlockScores {
  const count = drawn.length;
  return {
    scores: new Float64Array(years * count * laneCount),
    independent: new Float64Array(years * count),
    correlated: new Float64Array(count),
  };
}

/**
 * Draws trials `first` to `first + count` of a plan. The stream of a trial depends on the seed and the number of the trial alone, so that it
 * does not matter who draws it. Scores of inputs drawn yearly follow z_y = r z_(y-1) + sqrt(1 - r^2) e_y, which keeps every single
 * year's distribution as it is; correlations hold among the departures e of the same year.
 */
export function drawBlock(plan: TrialPlan, first: number, count: number, into: BlockScores): void {
  const { drawn, factor, years, uncertainty } = plan;
  const { scores, independent, correlated } = into;
  const inputs = drawn.length;
  const carried = drawn.map((each) => (each.drawn === 'yearly' ? each.persistence : 1));
  const fresh = carried.map((r) => Math.sqrt(1 - r * r));
  for (let lane = 0; lane < count; lane += 1) {
    fillNormalScores(uncertainty.seed, first + lane, independent, years * inputs);
    for (let year = 0; year < years; year += 1) {
      correlate(factor, inputs, independent, year * inputs, correlated);
      const row = year * inputs;
      for (let input = 0; input < inputs; input += 1) {
        const at = (row + input) * laneCount + lane;
        scores[at] =
          year === 0
            ? correlated[input]!
            : carried[input]! * scores[at - inputs * laneCount]! + fresh[input]! * correlated[input]!;
      }
    }
  }
}
