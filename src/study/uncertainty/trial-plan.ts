import type { Uncertainty } from '../../case/what-if.ts';
import { checkedCorrelation, lowerFactor } from '../../kernel/random/correlation.ts';
import { type Sampler, sampler } from '../../kernel/random/distribution.ts';
import { type BlockedPlan, blockedPlan } from '../../kernel/tape/blocked.ts';
import { coneOf } from '../../kernel/tape/cone.ts';
import { compileTape } from '../../kernel/tape/compile.ts';
import { inputPlace, resultSlot } from '../../kernel/tape/tape.ts';
import { planRowId } from '../../paper/investment/investment.ts';
import { npvId } from '../investment/npv-id.ts';
import { type WatchedLimit, watchedLimits, yearIds } from '../limits/watched-limits.ts';
import type { OpenCase } from '../open-case.ts';
import { type DrawnInput, drawnInput } from './drawn-input.ts';
import { usualUncertainty } from './usual-uncertainty.ts';

/** Everything that trials of a result need, made ready once; the same plan is made wherever trials run. */
export interface TrialPlan {
  readonly uncertainty: Uncertainty;
  /** Nobody has said what is uncertain: the usual ranges of shared inputs are drawn. */
  readonly isUsual: boolean;
  readonly drawn: readonly DrawnInput[];
  readonly samplers: readonly Sampler[];
  /** Lower triangular factor of the correlation of normal scores, row by row. */
  readonly factor: Float64Array;
  /** Largest change to an entry of the correlations as given, if they had to be repaired to be possible at all. */
  readonly repaired: number | null;
  /** Correlations of inputs that are carried from year to year otherwise than one another. */
  readonly fading: number;
  /** Years drawn: those of the investment plan for its present value; 1 where nothing is drawn anew each year, for all would be alike. */
  readonly years: number;
  readonly isYearly: boolean;
  /** Ids of the results: the one asked for first, then the costs or footprints it is the difference of. */
  readonly results: readonly string[];
  readonly slots: readonly number[];
  /** Of a present value over the years of an investment plan: what each year adds to it, worked out at the prices drawn for that year. */
  readonly sumOfYears: YearlyParts | null;
  readonly yearSlots: readonly number[];
  readonly limits: readonly WatchedLimit[];
  readonly limitSlots: readonly number[];
  readonly blocked: BlockedPlan;
  /** Slots and factors of the drawn inputs in the tape. */
  readonly places: readonly number[];
  readonly factors: readonly number[];
  /** Whether each drawn input moves any of the results. One that does not is drawn all the same, so that the others stay as they are. */
  readonly reaches: readonly boolean[];
}

/** Slots of the present value and of the cash flow of each year of an investment plan. */
export interface YearlyParts {
  readonly present: readonly number[];
  readonly flow: readonly number[];
  /** The first year in which the line runs: what is spent before is no bad year. */
  readonly operatesFrom: number;
}

/** Makes trials of a result ready. What the case says of its uncertainty must have been found in order. */
export function trialPlan(open: OpenCase, resultId: string, changes: Partial<Uncertainty> = {}): TrialPlan {
  const { graph } = open.model;
  const isUsual = open.content.uncertainty === undefined;
  const uncertainty = { ...(open.content.uncertainty ?? usualUncertainty(open, resultId)), ...changes };
  const drawn = graph.inputs.flatMap((input): readonly DrawnInput[] => {
    const given = Object.hasOwn(uncertainty.inputs, input.id) ? uncertainty.inputs[input.id] : undefined;
    const each = given === undefined ? null : drawnInput(input, given, open.content.currency);
    return each === null ? [] : [each];
  });
  const results = [resultId, ...partsOf(open, resultId)];
  const limits = watchedLimits(open);
  const isYearly = drawn.some((each) => each.drawn === 'yearly');
  const plan = resultId === npvId ? open.content.investment : undefined;
  const planYears = plan === undefined ? [] : Array.from({ length: plan.years + 1 }, (_, year) => year);
  const [present, flow] = [
    planYears.map((year) => planRowId('present', year)),
    planYears.map((year) => planRowId('flow', year)),
  ];
  const wanted = [...new Set([...results, ...yearIds, ...limits.map((limit) => limit.resultId), ...present, ...flow])];
  const tape = compileTape(graph, wanted);
  const slotOf = (id: string): number => resultSlot(tape, id);
  const places = drawn.map(({ input }) => inputPlace(tape, input.id));
  const correlation = checkedCorrelation(correlationMatrix(uncertainty, drawn));
  return {
    uncertainty,
    isUsual,
    drawn,
    samplers: drawn.map(({ distribution }) => sampler(distribution)),
    factor: lowerFactor(correlation.matrix),
    repaired: correlation.repaired ? correlation.moved : null,
    years: !isYearly ? 1 : plan === undefined ? uncertainty.years : planYears.length,
    isYearly,
    fading: isYearly ? fadingCorrelations(uncertainty, drawn) : 0,
    results,
    slots: results.map(slotOf),
    sumOfYears:
      plan === undefined
        ? null
        : { present: present.map(slotOf), flow: flow.map(slotOf), operatesFrom: plan.operatesFrom },
    yearSlots: yearIds.map(slotOf),
    limits,
    limitSlots: limits.map((limit) => slotOf(limit.resultId)),
    blocked: blockedPlan(tape, places, wanted.map(slotOf)),
    places,
    reaches: places.map(
      (place) => coneOf(tape, [place], results.map(slotOf)).length > 0 || results.map(slotOf).includes(place),
    ),
    factors: places.map((place) => tape.inputFactors[place] ?? 1),
  };
}

/** A difference is told beside the two results it is the difference of, trial by trial. */
function partsOf({ content, model }: OpenCase, resultId: string): readonly string[] {
  const { base, with: other } = content.compare;
  const tail = /^difference\.(.+)$/u.exec(resultId)?.[1];
  if (tail === undefined) return [];
  const named: Readonly<Record<string, string>> = {
    total: 'cost.total',
    totalPerYear: 'costPerYear.total',
    withoutPolicy: 'cost.withoutPolicy',
  };
  return [base, other].map((route) => `${route}.${named[tail] ?? tail}`).filter((id) => model.graph.positions.has(id));
}

function correlationMatrix({ correlations = [] }: Uncertainty, drawn: readonly DrawnInput[]): readonly number[][] {
  const matrix = drawn.map((_, row) => drawn.map((__, column): number => (row === column ? 1 : 0)));
  const at = new Map(drawn.map(({ input }, place) => [input.id, place]));
  for (const { one, other, value } of correlations) {
    const [row, column] = [at.get(one), at.get(other)];
    if (row === undefined || column === undefined) continue;
    matrix[row]![column] = Number(value);
    matrix[column]![row] = Number(value);
  }
  return matrix;
}

function fadingCorrelations({ correlations = [] }: Uncertainty, drawn: readonly DrawnInput[]): number {
  const carried = new Map(drawn.map((each) => [each.input.id, each.drawn === 'once' ? 1 : each.persistence]));
  return correlations.filter(({ one, other, value }) => {
    const [left, right] = [carried.get(one), carried.get(other)];
    return left !== undefined && right !== undefined && left !== right && Number(value) !== 0;
  }).length;
}
