import { Matrix, SingularValueDecomposition } from 'ml-matrix';
import { laneCount } from '../../kernel/tape/blocked.ts';
import { blockScores, drawBlock } from './draw-block.ts';
import type { TrialPlan } from './trial-plan.ts';

/** How the variance of a result is shared out among the inputs that were drawn. */
export interface VarianceShares {
  /** Largest first; a share can be below nothing where a correlated input works against the others. */
  readonly inputs: readonly {
    readonly id: string;
    readonly label: string;
    readonly where: string;
    readonly share: number;
  }[];
  /** What a plane through the inputs does not explain: bends and joint effects. */
  readonly rest: number;
}

const sampledBlocks = 16;

/**
 * Share of each input in the variance of a result: coefficient of a linear regression on all drawn inputs, times the covariance of the input
 * with the result, over the variance of the result. The shares add up to the R squared of the regression, correlated or not (Pratt 1987, "Dividing the
 * indivisible", Second Tampere Conference in Statistics, 245-260; from memory). It is taken from the first 16,384 trials, whose inputs are drawn again.
 */
export function varianceShares(plan: TrialPlan, values: Float64Array): VarianceShares {
  const inputs = sampledInputs(plan, Math.min(values.length, sampledBlocks * laneCount));
  const trials = Array.from(inputs[0] ?? [], (_, trial) => trial).filter((trial) => Number.isFinite(values[trial]));
  const centred = (all: Float64Array): Float64Array => {
    const kept = Float64Array.from(trials, (trial) => all[trial]!);
    const mean = kept.reduce((sum, value) => sum + value, 0) / kept.length;
    return kept.map((value) => value - mean);
  };
  const columns = inputs.map(centred);
  const result = centred(values);
  const variance = product(result, result);
  if (columns.length === 0 || !(variance > 0)) return { inputs: [], rest: 0 };
  // Each input is measured in its own deviations, so that prices in thousands and shares in hundredths weigh alike in the solution.
  const sizes = columns.map((column) => Math.sqrt(product(column, column)) || 1);
  const moments = new Matrix(
    columns.map((row, i) => columns.map((column, k) => product(row, column) / (sizes[i]! * sizes[k]!))),
  );
  const withResult = columns.map((column, i) => product(column, result) / sizes[i]!);
  const slopes = new SingularValueDecomposition(moments).solve(Matrix.columnVector(withResult)).to1DArray();
  const shares = plan.drawn.map(({ input }, i) => ({
    id: input.id,
    label: input.label,
    where: input.where ?? '',
    share: (slopes[i]! * withResult[i]!) / variance,
  }));
  return {
    inputs: shares.sort((a, b) => b.share - a.share),
    rest: 1 - shares.reduce((sum, { share }) => sum + share, 0),
  };
}

/** Figures of every drawn input by trial, each the mean of its years. */
function sampledInputs(plan: TrialPlan, trials: number): readonly Float64Array[] {
  const { drawn, samplers, years } = plan;
  const room = blockScores(plan);
  const sampled = drawn.map(() => new Float64Array(trials));
  for (let first = 0; first < trials; first += laneCount) {
    const lanes = Math.min(laneCount, trials - first);
    drawBlock(plan, first, lanes, room);
    sampled.forEach((into, input) => {
      const sample = samplers[input]!;
      for (let year = 0; year < years; year += 1) {
        const from = (year * drawn.length + input) * laneCount;
        for (let lane = 0; lane < lanes; lane += 1) into[first + lane]! += sample(room.scores[from + lane]!) / years;
      }
    });
  }
  return sampled;
}

function product(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let at = 0; at < a.length; at += 1) sum += a[at]! * b[at]!;
  return sum;
}
