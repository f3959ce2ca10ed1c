import type { Case, FootprintBasis } from '../case.ts';
import type { BasisOptions } from './edit.ts';

/** Changes what the footprint rests on; an option given as null goes back to the usual one. */
export function setBasis(content: Case, options: BasisOptions): Case {
  const { basis: before, ...rest } = content;
  const chosen = Object.entries({ ...before, ...options }).filter(([, option]) => option !== null);
  const basis = Object.fromEntries(chosen) as FootprintBasis;
  return chosen.length === 0 ? rest : { ...rest, basis };
}
