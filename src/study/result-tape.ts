import { compileTape } from '../kernel/tape/compile.ts';
import { conesOf } from '../kernel/tape/cones.ts';
import { runSteps, runTape } from '../kernel/tape/run.ts';
import { type Tape, freshSlots, inputPlace, resultSlot } from '../kernel/tape/tape.ts';
import type { OpenCase } from './open-case.ts';

/** One result of a case made ready to be asked many times with other figures. */
export class ResultTape {
  readonly tape: Tape;
  readonly slot: number;
  /** Values at the figures in force. */
  readonly base: Float64Array;
  readonly #work: Float64Array;
  /** What each input reaches, by its place. All of it serves the one result of the tape. */
  readonly #cones: readonly Int32Array[];

  constructor(open: OpenCase, resultId: string) {
    this.tape = compileTape(open.model.graph, [resultId]);
    this.slot = resultSlot(this.tape, resultId);
    this.base = freshSlots(this.tape);
    runTape(this.tape, this.base);
    this.#work = this.base.slice();
    this.#cones = conesOf(this.tape);
  }

  get baseValue(): number {
    return this.base[this.slot] ?? NaN;
  }

  /** The result with one input at another figure, in that input's entry unit. Only what the input reaches is worked out anew. */
  at(inputId: string, figure: number): number {
    const place = inputPlace(this.tape, inputId);
    const cone = this.#cones[place]!;
    const [work, base, { firstStep }] = [this.#work, this.base, this.tape];
    work[place] = figure * this.tape.inputFactors[place]!;
    runSteps(this.tape, work, cone);
    const value = work[this.slot]!;
    work[place] = base[place]!;
    for (let k = 0; k < cone.length; k += 1) work[firstStep + cone[k]!] = base[firstStep + cone[k]!]!;
    return value;
  }

  /** Whether the result depends on an input at all. */
  reaches(inputId: string): boolean {
    const place = inputPlace(this.tape, inputId);
    return place === this.slot || this.#cones[place]!.length > 0;
  }
}
