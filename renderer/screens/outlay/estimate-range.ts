import type { InputView } from '../../../src/index.ts';

export interface Ends {
  readonly low: string;
  readonly high: string;
}

/** One end of the range of an input as a slot shows it, in the unit of the input; blank where nobody knows one. */
export function rangeEndView(input: InputView, end: keyof Ends, range: Ends | null, isOwn: boolean): InputView {
  return {
    ...input,
    label: end === 'low' ? 'At least, of the estimate' : 'At most, of the estimate',
    where: '',
    value: range?.[end] ?? '',
    low: null,
    high: null,
    touched: isOwn,
  };
}

/** The range with one end typed over, plain digits; the other end is the one in force, or the figure itself where there is none. */
export function withEnd(typed: string, end: keyof Ends, range: Ends | null, figure: string): Ends {
  const digits = typed.replace(/\s*%$/u, '').trim();
  return { ...(range ?? { low: figure, high: figure }), [end]: digits };
}
