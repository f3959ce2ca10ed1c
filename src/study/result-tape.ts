import { compileTape } from '../kernel/tape/compile.ts';
import { coneOf } from '../kernel/tape/cone.ts';
import { runTape } from '../kernel/tape/run.ts';
import { type Tape, freshSlots, inputPlace, resultSlot } from '../kernel/tape/tape.ts';
import type { OpenCase } from './open-case.ts';

/** One result of a case made ready to be asked many times with other figures. */
export class ResultTape {
  readonly tape: Tape;
  readonly slot: number;
  /** Values at the figures in force. */
  readonly base: Float64Array;
  readonly #work: Float64Array;
  readonly #cones = new Map<number, Int32Array>();

  constructor(open: OpenCase, resultId: string) {
    this.tape = compileTape(open.model.graph, [resultId]);
    this.slot = resultSlot(this.tape, resultId);
    this.base = freshSlots(this.tape);
    runTape(this.tape, this.base);
    this.#work = this.base.slice();
  }

  get baseValue(): number {
    return this.base[this.slot] ?? NaN;
  }

  /** The result with one input at another figure, in that input's entry unit. Only what the input reaches is worked out anew. */
  at(inputId: string, figure: number): number {
    const place = inputPlace(this.tape, inputId);
    const cone = this.#coneOf(place);
    this.#work[place] = figure * (this.tape.inputFactors[place] ?? 1);
    runTape(this.tape, this.#work, cone);
    const value = this.#work[this.slot] ?? NaN;
    this.#work[place] = this.base[place] ?? NaN;
    for (const step of cone) this.#work[this.tape.firstStep + step] = this.base[this.tape.firstStep + step] ?? NaN;
    return value;
  }

  /** Whether the result depends on an input at all. */
  reaches(inputId: string): boolean {
    const place = inputPlace(this.tape, inputId);
    return place === this.slot || this.#coneOf(place).length > 0;
  }

  #coneOf(place: number): Int32Array {
    const known = this.#cones.get(place) ?? coneOf(this.tape, [place], [this.slot]);
    this.#cones.set(place, known);
    return known;
  }
}
