import { type InputDeclaration, inForce } from '../kernel/graph/input-declaration.ts';
import { soldOutId } from '../paper/machine-effect/effect-ids.ts';

/** How far an input is moved: to the ends of the range somebody judged it to have, else of its usual range; or by the same share of its figure. */
export type RangeMethod = 'usual range' | 'share either way';

/** Ends of an input in its entry unit. `convention` where no judged range exists and a share of the figure stands in for it. */
export interface InputRange {
  readonly low: number;
  readonly high: number;
  readonly convention: boolean;
  /** Whether somebody judged, or the trade knows, how far it can go; only then may it stand in a verdict. */
  readonly isKnown: boolean;
}

export const conventionalShare = 0.2;

/**
 * The range of an input for a study: the judged or usual one, or its figure and a share of it either way, kept within what is allowed. Null where
 * there is no figure, or the figure is nothing and no range says how far it could move.
 */
export function inputRange(
  input: InputDeclaration,
  method: RangeMethod,
  share: number = conventionalShare,
): InputRange | null {
  // A switch has no middle and no doubt: it is thrown, not moved.
  if (input.id === soldOutId) return null;
  const figure = Number(inForce(input) ?? NaN);
  if (!Number.isFinite(figure)) return null;
  const { low, high } = input.judged ?? input.usual;
  // What stands there only because nobody entered anything is no range that somebody judged.
  const isPlaceholder = input.judged === null && input.usual.provenance.status === 'none';
  const known = !isPlaceholder && low !== null && high !== null && Number(low) < Number(high);
  if (method === 'usual range' && known)
    return { low: Number(low), high: Number(high), convention: false, isKnown: true };
  if (figure === 0) return null;
  const reach = Math.abs(figure) * share;
  const range = withinAllowed(input, figure - reach, figure + reach);
  return range.low < range.high ? { ...range, convention: method === 'usual range', isKnown: known } : null;
}

function withinAllowed({ allowed }: InputDeclaration, low: number, high: number): { low: number; high: number } {
  const inside = (value: number): number => {
    const least = Number(allowed.least ?? allowed.above ?? -Infinity);
    const most = Number(allowed.most ?? allowed.below ?? Infinity);
    return Math.min(most, Math.max(least, value));
  };
  return { low: inside(low), high: inside(high) };
}
