import type { Cell, CellError, Look, NumberForm } from './plan.ts';

export const empty: Cell = { kind: 'empty' };

export const text = (words: string, look?: Look): Cell => ({
  kind: 'text',
  text: words,
  ...(look === undefined ? {} : { look }),
});

export const title = (words: string): Cell => text(words, 'title');
export const note = (words: string): Cell => text(words, 'note');
export const strong = (words: string): Cell => text(words, 'strong');
export const heads = (...words: readonly string[]): readonly Cell[] => words.map((word) => text(word, 'head'));

export const formula = (
  words: string,
  result: number | string | CellError,
  form: NumberForm = 'as typed',
  look?: Look,
): Cell => ({ kind: 'formula', formula: words, result, form, ...(look === undefined ? {} : { look }) });

/** A number as it is; words where it cannot be worked out, which is no number in any formula. */
export const number = (value: number, form: NumberForm, look?: Look): Cell =>
  Number.isFinite(value)
    ? { kind: 'number', value, form, ...(look === undefined ? {} : { look }) }
    : note('cannot be worked out');

/** A result of the program that no formula of the workbook follows. */
export const told = (value: number, form: NumberForm): Cell => number(value, form, 'program');
