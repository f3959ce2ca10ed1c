import type { Sensitivity, Spread } from '../../../../src/index.ts';
import { inputName } from '../tornado/input-name.ts';

export interface InputChoice {
  readonly value: string;
  readonly label: string;
}

/** Inputs that reach the result, those that move it most first; those without a known range come last. */
export function inputChoices(sensitivity: Sensitivity, spread: Spread): readonly InputChoice[] {
  return [...sensitivity.judged, ...sensitivity.conventional].map((swing) => ({
    value: swing.id,
    label: inputName(swing, spread),
  }));
}

/** The two inputs after one is chosen: one that stands at the other side changes places. */
export function chosenSides(
  before: { readonly across: string; readonly down: string },
  side: 'across' | 'down',
  id: string,
): { readonly across: string; readonly down: string } {
  const other = side === 'across' ? 'down' : 'across';
  const kept = before[other] === id ? before[side] : before[other];
  return side === 'across' ? { across: id, down: kept } : { across: kept, down: id };
}
