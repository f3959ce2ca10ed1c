import type { Uncertainty } from '../../src/case/what-if.ts';
import type { InputDeclaration } from '../../src/kernel/graph/input-declaration.ts';
import { percentiles } from '../../src/kernel/random/percentiles.ts';
import { laneCount } from '../../src/kernel/tape/blocked.ts';
import { freshSlots } from '../../src/kernel/tape/tape.ts';
import type { OpenCase } from '../../src/study/open-case.ts';
import { ResultTape } from '../../src/study/result-tape.ts';
import { blockScores, drawBlock } from '../../src/study/uncertainty/draw-block.ts';
import { TrialRun } from '../../src/study/uncertainty/run-trials.ts';
import { type TrialPlan, trialPlan } from '../../src/study/uncertainty/trial-plan.ts';
import { toldPercentiles } from '../../src/study/uncertainty/trial-summary.ts';
import { type BenchCase, figureOf, openDemonstration, reachingOf, resultId } from './bench-case.ts';
import { interleaved, median, timeOf } from './interleaved.ts';
import { type Measured, timesAsLong } from './measured.ts';

const trials = 1_000_000;
const drawnInputs = 8;
const rounds = 3;
const shares = toldPercentiles.map((percentile) => percentile / 100);

/**
 * A million trials of one year, eight prices drawn and correlated, with percentiles. The reference draws the same trials from the same
 * streams and selects the same percentiles, but works the model out with straight-line code, trial by trial.
 */
export function measureTrials({ open, tape, result, reaching, straight }: BenchCase): readonly Measured[] {
  const plan = planOf(open, reaching);
  const times = interleaved(
    Object.fromEntries(straight.map(({ form, run }) => [form, () => run(result.base.slice())])),
  );
  const [fastestForm] = [...straight].sort((a, b) => (times[a.form] ?? 0) - (times[b.form] ?? 0));
  if (fastestForm === undefined) throw new Error('There is no straight-line code');
  const ours = (count: number) => (): readonly number[] => percentilesOf(plan, count);
  const theirs = (count: number) => (): readonly number[] =>
    straightPercentiles(plan, fastestForm.run, freshSlots(tape), count);
  // Fewer trials warm both up, and show that both draw the same.
  if (String(ours(trials / 10)()) !== String(theirs(trials / 10)())) throw new Error('The trials are others');
  const taken = Array.from({ length: rounds }, () => [timeOf(ours(trials), 1), timeOf(theirs(trials), 1)] as const);
  return [
    timesAsLong(
      'trials',
      `${trials.toLocaleString('en')} trials of ${drawnInputs} correlated prices, with percentiles`,
      median(taken.map(([own]) => own)),
      median(taken.map(([, other]) => other)),
    ),
  ];
}

/** A million trials and nothing else, for a process whose memory is looked at. */
export function trialsAlone(): void {
  const open = openDemonstration();
  percentilesOf(planOf(open, reachingOf(open, new ResultTape(open, resultId))), trials);
}

function planOf(open: OpenCase, reaching: readonly InputDeclaration[]): TrialPlan {
  const isPrice = ({ id }: InputDeclaration): boolean => id.startsWith('price.') || id.endsWith('.price');
  const drawn = reaching.filter((input) => isPrice(input) && figureOf(input) > 0).slice(0, drawnInputs);
  if (drawn.length < drawnInputs) throw new Error('The case has too few prices');
  const uncertainty: Uncertainty = {
    trials,
    seed: 1,
    years: 1,
    inputs: Object.fromEntries(drawn.map((input, place) => [input.id, lawOf(input, place)])),
    correlations: drawn.flatMap(({ id: one }, place) =>
      drawn.slice(place + 1).map(({ id: other }) => ({ one, other, value: '0.5' })),
    ),
  };
  return trialPlan(open, resultId, uncertainty);
}

/** Each law of a price in turn. */
function lawOf(input: InputDeclaration, place: number): Uncertainty['inputs'][string] {
  const figure = figureOf(input);
  const ends = { low: String(figure * 0.7), high: String(figure * 1.5) };
  const deviation = String(figure * 0.15);
  const laws = [
    { law: 'PERT', ...ends },
    { law: 'lognormal', deviation },
    { law: 'triangular', ...ends },
    { law: 'normal', deviation },
  ] as const;
  return laws[place % laws.length] ?? laws[0];
}

function percentilesOf(plan: TrialPlan, count: number): readonly number[] {
  const run = new TrialRun(plan, 0, count);
  while (!run.isDone) run.step();
  return percentiles(run.segment.values[0] ?? new Float64Array(0), shares);
}

function straightPercentiles(
  plan: TrialPlan,
  run: (values: Float64Array) => number,
  values: Float64Array,
  count: number,
): readonly number[] {
  const results = new Float64Array(count);
  const scores = blockScores(plan);
  for (let first = 0; first < count; first += laneCount) {
    const lanes = Math.min(laneCount, count - first);
    drawBlock(plan, first, lanes, scores);
    for (let lane = 0; lane < lanes; lane += 1) {
      for (let input = 0; input < drawnInputs; input += 1) {
        const figure = plan.samplers[input]!(scores.scores[input * laneCount + lane]!);
        values[plan.places[input]!] = figure * plan.factors[input]!;
      }
      results[first + lane] = run(values);
    }
  }
  return percentiles(results, shares);
}
