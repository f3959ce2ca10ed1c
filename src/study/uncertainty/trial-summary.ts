import { percentiles } from '../../kernel/random/percentiles.ts';
import { nodeNamed } from '../../kernel/graph/graph.ts';
import type { Limit } from '../../case/what-if.ts';
import type { OpenCase } from '../open-case.ts';
import { type Convergence, convergenceOf } from './convergence.ts';
import { type DrawnSummary, drawnSummary } from './drawn-summary.ts';
import { type Histogram, histogramOf } from './histogram.ts';
import type { TrialSegment } from './run-trials.ts';
import type { TrialPlan } from './trial-plan.ts';
import { type VarianceShares, varianceShares } from './variance-shares.ts';

/** Percentiles that are always told, by the R-7 rule. */
export const toldPercentiles = [5, 10, 50, 90, 95] as const;

/** One result over all trials, in its own unit. */
export interface ResultSpread {
  readonly id: string;
  readonly label: string;
  readonly unit: string;
  readonly mean: number;
  readonly standardError: number;
  readonly deviation: number;
  /** At the percentiles that are told, in their order. */
  readonly percentiles: readonly number[];
}

export interface LimitBreaches {
  readonly limit: Limit;
  readonly route: string;
  /** The unit of the limit by its symbols. */
  readonly unit: string;
  /** Share of the trials in which it is broken, in any year. */
  readonly share: number;
}

/** Cash flows in bad years, in money: percentiles over the trials, those that are told. */
export interface WorstYears {
  readonly year: readonly number[];
  readonly three: readonly number[];
  readonly negative: number;
}

/** What trials of a result say. The result asked for comes first; those it is the difference of follow, drawn in the same trials. */
export interface TrialSummary {
  readonly trials: number;
  readonly seed: number;
  /** Years over which each trial is averaged; 1 where nothing changes from year to year. */
  readonly years: number;
  readonly isYearly: boolean;
  /** A present value over the years of the plan, and no mean of them. */
  readonly isPresentValue: boolean;
  readonly isUsual: boolean;
  /** Largest change to a correlation, where they had to be repaired. */
  readonly repaired: number | null;
  /** Correlations of inputs that are not carried from year to year alike: they hold fully in the first year only. */
  readonly fading: number;
  /** The result at the figures in force. */
  readonly today: number;
  /** Trials in which a result could not be worked out; they are left out of everything else. */
  readonly failed: number;
  readonly results: readonly ResultSpread[];
  /** Share of the trials in which the result is below nothing (of a difference: the route compared is the lower one), with its standard error. */
  readonly belowNothing: { readonly share: number; readonly standardError: number };
  /** Of a present value: the worst year of operation, the worst three running, and the share of trials with any year below nothing. */
  readonly worst: WorstYears | null;
  readonly histogram: Histogram;
  readonly convergence: readonly Convergence[];
  readonly variance: VarianceShares;
  readonly breaches: readonly LimitBreaches[];
  readonly drawn: readonly DrawnSummary[];
}

/** Sums trials up. Segments may come in any order; together they hold every trial once. */
export function trialSummary(open: OpenCase, plan: TrialPlan, segments: readonly TrialSegment[]): TrialSummary {
  const ordered = [...segments].sort((a, b) => a.first - b.first);
  const all = plan.results.map((_, result) => joined(ordered.map(({ values }) => values[result]!)));
  const trials = all[0]?.length ?? 0;
  const valid = all.map((values) => withoutFailures(values, all));
  const counted = valid[0]?.length ?? 0;
  const main = valid[0] ?? new Float64Array(0);
  const below = main.reduce((count, value) => count + (value < 0 ? 1 : 0), 0) / counted;
  return {
    trials,
    seed: plan.uncertainty.seed,
    years: plan.years,
    isYearly: plan.isYearly,
    isPresentValue: plan.sumOfYears !== null,
    isUsual: plan.isUsual,
    repaired: plan.repaired,
    fading: plan.fading,
    today: plan.blocked.base[plan.slots[0] ?? 0] ?? NaN,
    failed: trials - counted,
    results: plan.results.map((id, result) => resultSpread(open, id, valid[result]!)),
    belowNothing: { share: below, standardError: Math.sqrt((below * (1 - below)) / counted) },
    worst: worstYears(ordered, all),
    histogram: histogramOf(main),
    convergence: convergenceOf(main),
    variance: varianceShares(plan, all[0] ?? main),
    breaches: plan.limits.map(({ limit, route, unit }, place) => ({
      limit,
      route,
      unit,
      share: ordered.reduce((sum, { breaches }) => sum + (breaches[place] ?? 0), 0) / counted,
    })),
    drawn: plan.drawn.map((each, place) => drawnSummary(each, plan.reaches[place] ?? false)),
  };
}

function worstYears(segments: readonly TrialSegment[], results: readonly Float64Array[]): WorstYears | null {
  const told = toldPercentiles.map((percent) => percent / 100);
  const all = (part: 'year' | 'three'): Float64Array =>
    withoutFailures(joined(segments.flatMap(({ worst }) => (worst === null ? [] : [worst[part]]))), results);
  const [year, three] = [all('year'), all('three')];
  if (year.length === 0) return null;
  return {
    year: percentiles(year, told),
    three: three.length === 0 ? [] : percentiles(three, told),
    negative: year.reduce((count, value) => count + (value < 0 ? 1 : 0), 0) / year.length,
  };
}

function joined(parts: readonly Float64Array[]): Float64Array {
  const whole = new Float64Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** A trial counts only where all its results could be worked out, so that differences stay paired. */
function withoutFailures(values: Float64Array, all: readonly Float64Array[]): Float64Array {
  if (all.every((each) => each.every(Number.isFinite))) return values;
  return values.filter((_, trial) => all.every((each) => Number.isFinite(each[trial])));
}

function resultSpread({ model }: OpenCase, id: string, values: Float64Array): ResultSpread {
  const { declaration, unit } = nodeNamed(model.graph, id);
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  // What is left of values that are all alike is the rounding of their sum.
  const found = Math.sqrt(squares / (values.length - 1));
  const deviation = found <= Math.abs(mean) * 1e-12 ? 0 : found;
  return {
    id,
    label: declaration?.label ?? id,
    unit: unit.text,
    mean,
    standardError: deviation / Math.sqrt(values.length),
    deviation,
    percentiles:
      values.length === 0
        ? toldPercentiles.map(() => NaN)
        : percentiles(
            values,
            toldPercentiles.map((percent) => percent / 100),
          ),
  };
}
