import { type BreakEven, breakEven, formatNumber, unitLabel } from '../index.ts';
import { textTable } from '../report/text-table.ts';
import { type Console, WrongUse } from './console.ts';
import { type SetOptions, openWithSets, wholly } from './open-with-sets.ts';
import { inputOf, resultOf } from './result-of.ts';

export interface BreakEvenOptions extends SetOptions {
  readonly result: string;
  readonly target: string;
  readonly json?: boolean;
}

/** Prints where a result meets a target as one input moves: all crossings in the range that was searched, or that there is none. */
export function showBreakEven(
  console: Console,
  file: string,
  inputs: readonly string[],
  options: BreakEvenOptions,
): void {
  const open = wholly(openWithSets(file, options));
  const target = Number(options.target);
  if (!Number.isFinite(target)) throw new WrongUse(`--target takes a number; "${options.target}" was given.`);
  const result = resultOf(open, options.result);
  const wanted =
    inputs.length > 0 ? inputs.map((id) => inputOf(open, id)) : open.model.graph.inputs.map((input) => input.id);
  const found = wanted.flatMap((id) => breakEven(open, result, id, target) ?? []);
  if (options.json === true) {
    console.say(`${JSON.stringify(found, null, 2)}\n`);
    return;
  }
  // Of all inputs of a case most do not move a result; of those asked for by name each is answered.
  const still = inputs.filter((id) => !found.some((each) => each.id === id));
  const table = found.length === 0 ? [] : [page(found, result, target, console.locale)];
  console.say([...table, ...still.map((id) => `${id} does not move ${result}.\n`)].join('\n'));
}

function page(found: readonly BreakEven[], result: string, target: number, locale: string): string {
  const number = (value: number): string => formatNumber(value, { locale, significant: 8 });
  const heads = ['input', 'figure', 'unit', 'turns at', 'searched', 'within the usual range'];
  const rows = found.map((each) => [
    `${each.label}${each.where === '' ? '' : ` (${each.where})`}`,
    number(each.figure),
    unitLabel(each.unit),
    each.crossings.length === 0 ? 'none within the range' : each.crossings.map(number).join('; '),
    `${number(each.from)} to ${number(each.to)}`,
    each.usual === null ? '' : each.usual ? 'yes' : 'no',
  ]);
  return `Where ${result} meets ${number(target)}, one input at a time\n${textTable(
    heads.map((head) => ({ head, holds: head === 'figure' ? 'figures' : 'words' })),
    rows,
  )}\n`;
}
