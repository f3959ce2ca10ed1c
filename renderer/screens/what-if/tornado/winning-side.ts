/** Who wins at a figure of a result: the route compared or the base; null at nothing and where there is no number. */
export type WinningSide = 'with' | 'base' | null;

/** `winsBelow` says whether the route compared is the one that wins below nothing. */
export function winningSide(value: number, winsBelow: boolean): WinningSide {
  if (!Number.isFinite(value) || value === 0) return null;
  return value < 0 === winsBelow ? 'with' : 'base';
}
