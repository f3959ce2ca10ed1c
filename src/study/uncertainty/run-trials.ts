import { type BlockedPlan, laneCount, lanesOf, runBlock, varies } from '../../kernel/tape/blocked.ts';
import { isKept } from '../limits/watched-limits.ts';
import { type BlockScores, blockScores, drawBlock } from './draw-block.ts';
import type { TrialPlan } from './trial-plan.ts';

/** What a stretch of trials came to: values of each result by trial, and trials in which each limit was broken. */
export interface TrialSegment {
  /** Number of the first trial. */
  readonly first: number;
  readonly values: readonly Float64Array[];
  /** Of a present value over years: the least cash flow of a year of operation, and of three years running. */
  readonly worst: { readonly year: Float64Array; readonly three: Float64Array } | null;
  readonly breaches: readonly number[];
}

/** A stretch of trials, worked block by block so that whoever runs it can look up between blocks. */
export class TrialRun {
  readonly #plan: TrialPlan;
  readonly #first: number;
  readonly #count: number;
  readonly #values: readonly Float64Array[];
  readonly #worst: TrialSegment['worst'];
  readonly #flows: Float64Array;
  readonly #breaches: number[];
  readonly #scores: BlockScores;
  readonly #broken: Uint8Array;
  #done = 0;

  /** Trials `first` to `first + count`; `first` is a multiple of the lanes of a block. */
  constructor(plan: TrialPlan, first: number, count: number) {
    this.#plan = plan;
    this.#first = first;
    this.#count = count;
    this.#values = plan.results.map(() => new Float64Array(count));
    this.#worst = plan.sumOfYears === null ? null : { year: new Float64Array(count), three: new Float64Array(count) };
    this.#flows = new Float64Array((plan.sumOfYears?.flow.length ?? 0) * laneCount);
    this.#breaches = plan.limits.map(() => 0);
    this.#scores = blockScores(plan);
    this.#broken = new Uint8Array(plan.limits.length * laneCount);
  }

  get done(): number {
    return this.#done;
  }

  get isDone(): boolean {
    return this.#done >= this.#count;
  }

  get segment(): TrialSegment {
    return { first: this.#first, values: this.#values, worst: this.#worst, breaches: this.#breaches };
  }

  /**
   * Works the next block. A result over several years is the mean of its years; a present value takes from each year what that year adds
   * to it. A limit is broken where it is in any year.
   */
  step(): void {
    const plan = this.#plan;
    const lanes = Math.min(laneCount, this.#count - this.#done);
    drawBlock(plan, this.#first + this.#done, lanes, this.#scores);
    this.#broken.fill(0);
    for (let year = 0; year < plan.years; year += 1) {
      fillInputs(plan, this.#scores, year, lanes);
      runBlock(plan.blocked, lanes);
      plan.slots.forEach((slot, result) => {
        const part = result === 0 && plan.isYearly ? plan.sumOfYears?.present[year] : undefined;
        const weight = part === undefined ? 1 / plan.years : 1;
        addResults(plan.blocked, part ?? slot, this.#values[result]!, this.#done, lanes, weight);
      });
      this.#keepFlows(year, lanes);
      this.#markBroken(lanes);
    }
    this.#findWorst(lanes);
    // Limits are counted over the trials that everything else is counted over.
    for (let lane = 0; lane < lanes; lane += 1) {
      if (!this.#values.every((values) => Number.isFinite(values[this.#done + lane]))) continue;
      plan.limits.forEach((_, limit) => {
        this.#breaches[limit]! += this.#broken[limit * laneCount + lane]!;
      });
    }
    this.#done += lanes;
  }

  /** Where nothing is drawn anew, one working gives the flows of all years. */
  #keepFlows(drawnYear: number, lanes: number): void {
    this.#plan.sumOfYears?.flow.forEach((slot, year) => {
      if (this.#plan.isYearly && year !== drawnYear) return;
      const value = reader(this.#plan.blocked, slot);
      for (let lane = 0; lane < lanes; lane += 1) this.#flows[year * laneCount + lane] = value(lane);
    });
  }

  #findWorst(lanes: number): void {
    const { sumOfYears } = this.#plan;
    if (sumOfYears === null || this.#worst === null) return;
    const years = sumOfYears.flow.length;
    for (let lane = 0; lane < lanes; lane += 1) {
      const flow = (year: number): number => this.#flows[year * laneCount + lane]!;
      let [year, three] = [Infinity, Infinity];
      for (let at = sumOfYears.operatesFrom; at < years; at += 1) {
        year = Math.min(year, flow(at));
        if (at + 2 < years) three = Math.min(three, flow(at) + flow(at + 1) + flow(at + 2));
      }
      this.#worst.year[this.#done + lane] = year;
      this.#worst.three[this.#done + lane] = three;
    }
  }

  #markBroken(lanes: number): void {
    const { limits, limitSlots, yearSlots, blocked } = this.#plan;
    const [tonnes, hours] = yearSlots.map((slot) => reader(blocked, slot));
    limits.forEach(({ limit, reading }, place) => {
      const result = reader(blocked, limitSlots[place] ?? 0);
      for (let lane = 0; lane < lanes; lane += 1) {
        const value = reading(result(lane), tonnes?.(lane) ?? NaN, hours?.(lane) ?? NaN);
        // A trial that cannot be worked out is told as such, and breaks nothing.
        if (!Number.isNaN(value) && !isKept(limit, value)) this.#broken[place * laneCount + lane] = 1;
      }
    });
  }
}

/** Turns the scores of a year into figures. What is drawn once for the plan stays as the first year left it. */
function fillInputs(plan: TrialPlan, { scores }: BlockScores, year: number, lanes: number): void {
  plan.drawn.forEach(({ drawn }, input) => {
    if (year > 0 && drawn === 'once') return;
    const sample = plan.samplers[input]!;
    const factor = plan.factors[input]!;
    const into = lanesOf(plan.blocked, plan.places[input]!);
    const from = (year * plan.drawn.length + input) * laneCount;
    for (let lane = 0; lane < lanes; lane += 1) into[lane] = sample(scores[from + lane]!) * factor;
  });
}

function addResults(
  blocked: BlockedPlan,
  slot: number,
  into: Float64Array,
  at: number,
  lanes: number,
  weight: number,
): void {
  const value = reader(blocked, slot);
  for (let lane = 0; lane < lanes; lane += 1) into[at + lane]! += value(lane) * weight;
}

function reader(blocked: BlockedPlan, slot: number): (lane: number) => number {
  if (!varies(blocked, slot)) {
    const fixed = blocked.base[slot] ?? NaN;
    return () => fixed;
  }
  const values = lanesOf(blocked, slot);
  return (lane) => values[lane]!;
}
