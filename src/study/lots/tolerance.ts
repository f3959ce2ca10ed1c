import type { PaperGrade } from '../../paper/materials/en-643.ts';
import type { Unwanted } from '../../paper/materials/composition.ts';

/** How far a lot is above what its grade tolerates, in points of per cent; 0 where it is not. */
export interface Excess {
  readonly nonPaper: number;
  readonly unwanted: number;
}

/** Non-paper is film, heavies and wire; all unwanted material is that and wet-strength paper. Both on dry mass here. */
export function excessOver(grade: PaperGrade | null, kinds: Readonly<Record<Unwanted, number>>): Excess {
  if (grade === null) return { nonPaper: 0, unwanted: 0 };
  const nonPaper = kinds.lights + kinds.heavies + kinds.wire;
  return {
    nonPaper: above(nonPaper, Number(grade.nonPaper)),
    unwanted: above(nonPaper + kinds.wetStrength, Number(grade.unwanted)),
  };
}

export function isOver({ nonPaper, unwanted }: Excess): boolean {
  return nonPaper > 0 || unwanted > 0;
}

/** What would be in the lot if it kept the tolerance: non-paper cut to its limit, then wet-strength paper to what that leaves. */
export function withinTolerance(
  grade: PaperGrade,
  kinds: Readonly<Record<Unwanted, number>>,
): Readonly<Record<Unwanted, number>> {
  const nonPaper = kinds.lights + kinds.heavies + kinds.wire;
  const most = Math.min(Number(grade.nonPaper), Number(grade.unwanted));
  const kept = Math.min(nonPaper, most);
  const part = nonPaper > 0 ? kept / nonPaper : 0;
  return {
    lights: kinds.lights * part,
    heavies: kinds.heavies * part,
    wire: kinds.wire * part,
    wetStrength: Math.min(kinds.wetStrength, Number(grade.unwanted) - kept),
  };
}

// What adds up to a limit in theory may exceed it by the last bits.
function above(value: number, limit: number): number {
  return value - limit > 1e-9 ? value - limit : 0;
}
