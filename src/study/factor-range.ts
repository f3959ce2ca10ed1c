import type { InputDeclaration } from '../kernel/graph/input-declaration.ts';

/** Ends of a factor's range in its entry unit. */
export interface FactorRange {
  readonly low: number;
  readonly high: number;
}

/**
 * How far a carbon factor may be wrong. The range of the default goes along with a figure that takes its place, in proportion; a figure
 * that was measured, or read where it stands, leaves no such doubt. Null where nothing is known or nothing is left open.
 */
export function factorRange({ usual, judged, given }: InputDeclaration): FactorRange | null {
  if (judged !== null) return { low: Number(judged.low), high: Number(judged.high) };
  if (usual.low === null || usual.high === null) return null;
  const [low, high, value] = [Number(usual.low), Number(usual.high), Number(usual.value)];
  if (given === null) return { low, high };
  if (given.provenance.status === 'measured' || given.provenance.status === 'read') return null;
  const figure = Number(given.value);
  if (value === 0) return { low: figure + low, high: figure + high };
  return { low: (figure * low) / value, high: (figure * high) / value };
}
