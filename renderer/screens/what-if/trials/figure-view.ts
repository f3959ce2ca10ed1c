import type { InputView } from '../../../../src/index.ts';

interface Wanted {
  /** Names the slot on the page, apart from that of the input itself. */
  readonly id: string;
  readonly label: string;
  readonly unit: string;
  /** Plain digits that somebody gave; undefined where nobody did. */
  readonly given: string | undefined;
  /** What stands in for it; "" for nothing. */
  readonly standIn: string;
  readonly source: string;
}

/** A figure of a law as a slot shows it: one that stands in for a missing one has the dotted foot of a default. */
export function figureView({ id, label, unit, given, standIn, source }: Wanted): InputView {
  return {
    id,
    label,
    where: '',
    value: given ?? standIn,
    unit,
    low: null,
    high: null,
    allowed: {},
    status: 'none',
    source: given === undefined ? `No source given: ${source}` : '',
    note: '',
    touched: given !== undefined,
    usual: null,
  };
}
