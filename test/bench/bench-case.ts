import demonstration from '../../examples/demonstration.tonne?raw';
import { type InputDeclaration, inForce } from '../../src/kernel/graph/input-declaration.ts';
import { compileTape } from '../../src/kernel/tape/compile.ts';
import { type Tape, inputPlace } from '../../src/kernel/tape/tape.ts';
import { productChoices } from '../../src/paper/new-case.ts';
import { type OpenCase, openCase } from '../../src/study/open-case.ts';
import { ResultTape } from '../../src/study/result-tape.ts';
import { startCase } from '../../src/study/start-case.ts';
import { type StraightLine, straightLines } from './straight-line.ts';

export const resultId = 'difference.total';

/** A case to measure on, with the tape of its result and the same model as straight-line code. */
export interface BenchCase {
  readonly name: string;
  readonly open: OpenCase;
  readonly result: ResultTape;
  readonly tape: Tape;
  /** Inputs that reach the result. */
  readonly reaching: readonly InputDeclaration[];
  readonly straight: readonly StraightLine[];
}

export function benchCases(): readonly BenchCase[] {
  return [benchCase('the demonstration case', openDemonstration()), largestTemplate()];
}

export function openDemonstration(): OpenCase {
  const opened = openCase(demonstration);
  if (!opened.ok) throw new Error('The demonstration case cannot be opened');
  return opened.value;
}

/** The pair of furnishes in the program's own lists whose tape has most steps. */
function largestTemplate(): BenchCase {
  const cases = productChoices().flatMap(({ product, virgin, recovered }) =>
    virgin.flatMap((one) =>
      recovered.flatMap((other) => {
        const wanted = { title: product, tonnesPerYear: '100000', currency: 'EUR', priceYear: '2024' };
        const started = startCase({ ...wanted, virgin: one.id, recovered: other.id });
        return started.ok ? [{ name: `the largest template, ${product.toLowerCase()}`, open: started.value }] : [];
      }),
    ),
  );
  const stepsOf = ({ open }: { open: OpenCase }): number => compileTape(open.model.graph, [resultId]).codes.length;
  const [largest] = cases.sort((a, b) => stepsOf(b) - stepsOf(a));
  if (largest === undefined) throw new Error('No template can be started');
  return benchCase(largest.name, largest.open);
}

function benchCase(name: string, open: OpenCase): BenchCase {
  const result = new ResultTape(open, resultId);
  const { tape, slot, baseValue } = result;
  return {
    name,
    open,
    result,
    tape,
    reaching: reachingOf(open, result),
    straight: straightLines(tape, slot, baseValue),
  };
}

export function reachingOf(open: OpenCase, result: ResultTape): readonly InputDeclaration[] {
  return open.model.graph.inputs.filter((input) => result.reaches(input.id));
}

/** The same case whose tapes have not been compiled yet: they are kept with the graph. */
export function uncompiled(open: OpenCase): OpenCase {
  return { ...open, model: { ...open.model, graph: { ...open.model.graph } } };
}

/** The figure in force in the entry unit. */
export function figureOf(input: InputDeclaration): number {
  return Number(inForce(input) ?? NaN);
}

/** Where an input stands in the tape, and what turns its figures into the unit the tape reckons in. */
export function placeOf(tape: Tape, id: string): { place: number; factor: number } {
  const place = inputPlace(tape, id);
  return { place, factor: tape.inputFactors[place] ?? 1 };
}
