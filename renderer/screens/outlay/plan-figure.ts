import type { InputView } from '../../../src/index.ts';
import { blankInput } from '../../fields/blank-input.ts';
import { inMillions } from './million-figures.ts';

/** A figure of the plan that somebody may give: where it stands and in what. */
export interface PlanFigure {
  readonly id: string;
  readonly label: string;
  /** Unit of entry. */
  readonly unit: string;
  /** Money is written in millions. */
  readonly isMoney: boolean;
}

/**
 * The figure as a slot shows it. Figures that exist only once given have a blank until then. A usual range that is one point is that of a
 * figure nobody has entered, and no reason to doubt another one.
 */
export function planFigureView(inputs: Readonly<Record<string, InputView>>, figure: PlanFigure): InputView {
  const input = Object.hasOwn(inputs, figure.id) ? inputs[figure.id] : undefined;
  const view = input ?? blankInput({ id: figure.id, label: figure.label, unit: figure.unit });
  const isPoint = view.low === view.high;
  return {
    ...view,
    label: figure.label,
    where: '',
    ...(isPoint ? { low: null, high: null } : {}),
    ...(figure.isMoney ? { value: inMillions(view.value) } : {}),
  };
}
