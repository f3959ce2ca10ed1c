import type { Changes } from '../../src/kernel/evaluate/decimal.ts';
import type { InputDeclaration } from '../../src/kernel/graph/input-declaration.ts';
import { type Model, buildModel } from '../../src/paper/model.ts';
import { Dice } from './dice.ts';
import { type Size, randomCase } from './random-case.ts';

/** A random case built, with a random figure for every input, in its entry unit. */
export interface RandomModel {
  readonly seed: number;
  readonly model: Model;
  readonly figures: Changes;
}

export function randomModel(seed: number, size?: Size): RandomModel {
  const model = buildModel(randomCase(seed, size));
  const wrong = model.problems.filter((problem) => problem.kind !== 'no figure');
  if (wrong.length > 0) throw new Error(`Seed ${String(seed)}: ${JSON.stringify(wrong)}`);
  return { seed, model, figures: randomFigures(model, seed) };
}

/** Within the usual range where there is one; what was given stays; else by what the input is. */
export function randomFigures(model: Model, seed: number): Changes {
  const dice = new Dice(seed + 1_000_000);
  return new Map(
    model.graph.inputs.map((input): [string, string] => [input.id, input.given?.value ?? figureFor(dice, input)]),
  );
}

function figureFor(dice: Dice, input: InputDeclaration): string {
  // A switch is thrown, not moved.
  if (input.id === 'machine.soldOut') return String(dice.whole(0, 1));
  const special = ranges.find(([pattern]) => pattern.test(input.id));
  if (special !== undefined) return dice.digits(special[1], special[2]);
  const { low, high } = input.usual;
  if (low === null || high === null) throw new Error(`No range for "${input.id}"`);
  return dice.digits(Number(low), Number(high));
}

/** Ranges for inputs without a usual one, and for those whose usual ranges could contradict one another. */
const ranges: readonly (readonly [RegExp, number, number])[] = [
  [/^product\.tonnes$/u, 20_000, 400_000],
  // Few enough hours that a slower machine finds the ones it needs in the year.
  [/^product\.hours$/u, 6000, 7200],
  [/^product\.price$/u, 400, 1200],
  [/^product\.contribution$/u, 50, 500],
  [/\.machine\.(speed|time)$/u, 95, 102],
  [/\.machine\.seconds$/u, 0, 5],
  [/\.machine\.serviceFactor$/u, 0.98, 1.05],
  [/^machine\.secondsAllowance$/u, 0, 200],
  [/^machine\.extraHour$/u, 0, 900],
  [/^price\.heat$/u, 5, 30],
  [/^rate\./u, 0.7, 1.3],
  [/^material\.\w+\.price$/u, -20, 900],
  [/^material\.\w+\.moisture$/u, 4, 18],
  // Three others at most, so that the first always keeps something.
  [/\.share$/u, 0, 30],
  [/\.effluent$/u, 2, 20],
  [/\.noLoad$/u, 50, 400],
  // Far below these the reject would be thicker than pure solids.
  [/\.exponent\.fibre$/u, 0.7, 0.95],
  [/^chemical\.talc\.price$/u, 0.1, 0.6],
  [/\.heatFrom$/u, 30, 45],
  [/\.heatTo$/u, 60, 95],
  [/\.charge\./u, 1, 500],
  [/\.(labour|maintenance)$/u, 1e5, 2e6],
  [/^machine\.fixed$/u, 1e6, 2e7],
  [/\.priceDifference$/u, -20, 20],
  [/\.capital$/u, 1e6, 8e7],
];
