import { conesOf } from '../../src/kernel/tape/cones.ts';
import { type Side, spaced } from '../../src/study/two-way.ts';
import { type BenchCase, figureOf, placeOf } from './bench-case.ts';

export const figures = 51;
const reach = 0.05;

/** The two sides of a table. */
export interface Sides {
  readonly down: Side;
  readonly across: Side;
}

/** The tables that are worked out. */
export interface Tables {
  /** A price, and the figure of the process after whose change most steps must be worked out anew: the table that counts. */
  readonly usual: Sides;
  /** The two inputs that most steps depend on: no other table takes longer. */
  readonly hardest: Sides;
  readonly prices: Sides;
}

export function tablesOf(bench: BenchCase): Tables {
  const { tape, reaching } = bench;
  const cones = conesOf(tape);
  const stepsAfter = (id: string): number => cones[placeOf(tape, id).place]?.length ?? 0;
  const [first, second] = reaching
    .filter((input) => figureOf(input) !== 0)
    .map(({ id }) => id)
    .sort((a, b) => stepsAfter(b) - stepsAfter(a));
  if (first === undefined || second === undefined) throw new Error('Fewer than two inputs reach the result');
  const sides = (down: string, across: string): Sides => ({ down: sideOf(bench, down), across: sideOf(bench, across) });
  const [electricity, fuel] = ['price.electricity', 'price.fuel'] as const;
  return { usual: sides(first, electricity), hardest: sides(first, second), prices: sides(fuel, electricity) };
}

function sideOf({ reaching }: BenchCase, id: string): Side {
  const input = reaching.find((each) => each.id === id);
  if (input === undefined) throw new Error(`${id} does not reach the result`);
  const figure = figureOf(input);
  return { id, figures: spaced(figure * (1 - reach), figure * (1 + reach), figures) };
}
