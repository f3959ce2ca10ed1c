import { nodeNamed } from '../../kernel/graph/graph.ts';
import { laneCount } from '../../kernel/tape/blocked.ts';
import type { OpenCase } from '../open-case.ts';
import { blockScores, drawBlock } from './draw-block.ts';
import { TrialRun } from './run-trials.ts';
import type { TrialPlan } from './trial-plan.ts';

/** A column of the table of trials. */
interface TrialColumn {
  readonly id: string;
  readonly label: string;
  readonly where: string;
  readonly unit: string;
  /** A mean over the years that are drawn. */
  readonly isMean: boolean;
}

/** What stands in the columns: the results, then what was drawn. */
export function trialColumns({ model }: OpenCase, plan: TrialPlan): readonly TrialColumn[] {
  const { results, drawn, sumOfYears } = plan;
  const isOverYears = plan.years > 1;
  return [
    ...results.map((id): TrialColumn => {
      const { declaration, unit } = nodeNamed(model.graph, id);
      return {
        id,
        label: declaration?.label ?? id,
        where: declaration?.where ?? '',
        unit: unit.text,
        isMean: isOverYears && sumOfYears === null,
      };
    }),
    ...drawn.map(({ input, drawn: often }): TrialColumn => {
      const { id, label, where, entryUnit } = input;
      return { id, label, where: where ?? '', unit: entryUnit, isMean: isOverYears && often === 'yearly' };
    }),
  ];
}

/**
 * Every trial of a plan, a block at a time, so that few are in memory at once: for each the results as they are summed up elsewhere, and the
 * figures that were drawn, in the units people write them in; of an input that is drawn yearly the mean of its years. NaN where a
 * result cannot be worked out.
 */
export function* trialRows(plan: TrialPlan): Generator<readonly (readonly number[])[], void, void> {
  const { trials } = plan.uncertainty;
  const drawnAgain = blockScores(plan);
  for (let first = 0; first < trials; first += laneCount) {
    const count = Math.min(laneCount, trials - first);
    const run = new TrialRun(plan, first, count);
    run.step();
    drawBlock(plan, first, count, drawnAgain);
    yield Array.from({ length: count }, (_, lane) => [
      ...run.segment.values.map((values) => values[lane] ?? NaN),
      ...plan.drawn.map((_input, place) => meanDrawn(plan, drawnAgain.scores, place, lane)),
    ]);
  }
}

function meanDrawn({ drawn, samplers, years }: TrialPlan, scores: Float64Array, input: number, lane: number): number {
  const sample = samplers[input]!;
  const count = drawn[input]?.drawn === 'once' ? 1 : years;
  let sum = 0;
  for (let year = 0; year < count; year += 1) sum += sample(scores[(year * drawn.length + input) * laneCount + lane]!);
  return sum / count;
}
