import type { Problem } from '../../case/problem.ts';
import type { Scenario } from '../../case/what-if.ts';
import { type InputDeclaration, inForce } from '../../kernel/graph/input-declaration.ts';
import { compileTape } from '../../kernel/tape/compile.ts';
import { runTape } from '../../kernel/tape/run.ts';
import { type Tape, freshSlots, inputPlace, resultSlot } from '../../kernel/tape/tape.ts';
import { givenFigure } from '../../paper/entry.ts';
import { isCarbonFactor } from '../../paper/footprint/carbon-inputs.ts';
import { type LimitReading, limitReadings } from '../limits/limit-readings.ts';
import { watchedLimits, yearIds } from '../limits/watched-limits.ts';
import { type OpenCase, workOut } from '../open-case.ts';
import { onlyScenario } from './with-scenario.ts';

/** What a scenario comes to. */
export interface WorkedScenario {
  /** Figures of the scenario in the entry units of the inputs. */
  readonly figures: ReadonlyMap<string, string>;
  /** Inputs that exist only in the scenario. */
  readonly inputs: ReadonlyMap<string, InputDeclaration>;
  /** In the order of the results asked for; NaN where one cannot be worked out. */
  readonly values: readonly number[];
  readonly limits: readonly LimitReading[];
  readonly problems: readonly Problem[];
}

/**
 * Works scenarios of a case out on one tape, since most of them only put other figures into the same model. One that gives an input the
 * case does not have, or a carbon factor, which must name its source, is worked out as a case of its own.
 */
export class ScenarioDesk {
  readonly #open: OpenCase;
  readonly #results: readonly string[];
  readonly #inputs: ReadonlyMap<string, InputDeclaration>;
  readonly #tape: Tape;

  constructor(open: OpenCase, results: readonly string[]) {
    this.#open = open;
    this.#results = results;
    this.#inputs = new Map(open.model.graph.inputs.map((input) => [input.id, input]));
    const wanted = [...results, ...yearIds, ...watchedLimits(open).map(({ resultId }) => resultId)];
    this.#tape = compileTape(open.model.graph, [...new Set(wanted)]);
  }

  work(scenario: Scenario): WorkedScenario {
    const isPlain = Object.keys(scenario.inputs).every((id) => {
      const input = this.#inputs.get(id);
      return input !== undefined && !isCarbonFactor(input);
    });
    return isPlain ? this.#onTape(scenario) : this.#asCase(scenario);
  }

  #onTape(scenario: Scenario): WorkedScenario {
    const values = freshSlots(this.#tape);
    const figures = new Map<string, string>();
    const problems: Problem[] = [];
    for (const [id, given] of Object.entries(scenario.inputs)) {
      const input = this.#inputs.get(id)!;
      const found = givenFigure({ ...input, unit: input.entryUnit }, given);
      if (!found.ok) {
        problems.push(...found.problems);
        continue;
      }
      const place = inputPlace(this.#tape, id);
      figures.set(id, found.value.value);
      values[place] = Number(found.value.value) * (this.#tape.inputFactors[place] ?? 1);
    }
    runTape(this.#tape, values);
    const numberOf = (id: string): number => values[resultSlot(this.#tape, id)] ?? NaN;
    return { figures, inputs: new Map(), problems, ...this.#told(problems, this.#open, numberOf) };
  }

  #asCase(scenario: Scenario): WorkedScenario {
    const outcome = workOut(onlyScenario(this.#open.content, scenario));
    const problems = outcome.ok ? [] : outcome.problems;
    const found = outcome.ok ? outcome.value.model.graph.inputs.filter(({ id }) => id in scenario.inputs) : [];
    const worked = outcome.ok ? outcome.value : this.#open;
    const numberOf = (id: string): number => (worked.values.has(id) ? worked.values.number(id) : NaN);
    return {
      figures: new Map(found.map((input) => [input.id, inForce(input) ?? ''])),
      inputs: new Map(found.filter(({ id }) => !this.#inputs.has(id)).map((input) => [input.id, input])),
      problems,
      ...this.#told(problems, worked, numberOf),
    };
  }

  #told(
    problems: readonly Problem[],
    worked: OpenCase,
    numberOf: (id: string) => number,
  ): Pick<WorkedScenario, 'values' | 'limits'> {
    if (problems.length > 0) return { values: this.#results.map(() => NaN), limits: [] };
    return { values: this.#results.map(numberOf), limits: limitReadings(worked, numberOf) };
  }
}
