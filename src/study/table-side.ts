import { type InputDeclaration, inForce } from '../kernel/graph/input-declaration.ts';
import { inputRange } from './input-range.ts';
import type { Side } from './two-way.ts';

/**
 * Figures of an input for one side of a table: so many, in round steps from the figure in force, about as wide as the range of the input and
 * within what is allowed. The figure in force is one of them, and the figures of `reach` lie between the ends. Null where there is no figure or no range to spread them over.
 */
export function tableSide(input: InputDeclaration, count: number, reach: readonly number[] = []): Side | null {
  const range = inputRange(input, 'usual range') ?? inputRange(input, 'share either way');
  const figure = Number(inForce(input) ?? NaN);
  if (range === null || !Number.isFinite(figure)) return null;
  const low = Math.min(range.low, figure, ...reach);
  const high = Math.max(range.high, figure, ...reach);
  const least = Number(input.allowed.least ?? input.allowed.above ?? -Infinity);
  const most = Number(input.allowed.most ?? input.allowed.below ?? Infinity);
  const step = roundStep((high - low) / (count - 1), reach.length > 0);
  // The figure in force stands as far from the low end as it does in the range.
  const before = Math.round(((figure - low) / (high - low)) * (count - 1));
  const figures = Array.from({ length: count }, (_, place) => rounded(figure + (place - before) * step)).filter(
    (each) => each >= least && each <= most,
  );
  return figures.length < 2 ? null : { id: input.id, figures };
}

/** 1, 2, 2.5 or 5 times a power of ten, nearest to what is wanted; not below it where all of a reach must find its place. */
function roundStep(wanted: number, mustReach: boolean): number {
  const power = 10 ** Math.floor(Math.log10(wanted));
  const steps = [1, 2, 2.5, 5, 10].map((times) => times * power).filter((step) => !mustReach || step >= wanted);
  return steps.reduce((best, step) => (Math.abs(step - wanted) < Math.abs(best - wanted) ? step : best));
}

/** Takes away what binary fractions add: 0.1 + 0.2 is 0.3. */
function rounded(value: number): number {
  return Number(value.toPrecision(12));
}
