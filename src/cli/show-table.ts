import {
  type OpenCase,
  type Side,
  brokenInTable,
  formatNumber,
  mostFigures,
  spaced,
  twoWay,
  unitLabel,
} from '../index.ts';
import { figuresTable } from '../report/text-table.ts';
import { outside } from '../study/input-problems.ts';
import { problemSentence } from '../wording/problem-sentence.ts';
import { type Console, Refusal, WrongUse } from './console.ts';
import { type SetOptions, openWithSets, wholly } from './open-with-sets.ts';
import { inputOf, resultOf } from './result-of.ts';

export interface TableOptions extends SetOptions {
  readonly result: string;
  readonly json?: boolean;
}

/** Prints a result over two inputs. Each side is written ID=FROM..TO or ID=FROM..TO/COUNT, in the input's own unit. */
export function showTable(console: Console, file: string, across: string, down: string, options: TableOptions): void {
  const open = wholly(openWithSets(file, options));
  const [acrossSide, downSide] = [sideOf(open, across), sideOf(open, down)];
  if (acrossSide.id === downSide.id)
    throw new WrongUse(`A table takes two different inputs; "${acrossSide.id}" was given for both sides.`);
  const found = twoWay(open, resultOf(open, options.result), acrossSide, downSide);
  const limits = brokenInTable(open, acrossSide, downSide);
  if (options.json === true) {
    const broken = limits.map((cells) => cells.map((each) => each.map(({ id }) => id)));
    console.say(`${JSON.stringify({ ...found, broken }, null, 2)}\n`);
    return;
  }
  const number = (value: number): string => formatNumber(value, { locale: console.locale, significant: 6 });
  const heads = [`${found.down.id} \\ ${found.across.id}`, ...found.across.figures.map(number)];
  const rows = found.cells.map((cells, r) => [
    number(found.down.figures[r] ?? NaN),
    ...cells.map(
      (cell, column) =>
        `${Number.isNaN(cell) ? 'cannot be' : formatNumber(cell, { locale: console.locale, decimals: 2 })}${(limits[r]?.[column] ?? []).length > 0 ? ' !' : ''}`,
    ),
  ]);
  const names = [...new Set(limits.flat(2).map(({ label }) => label))];
  const legend = names.length === 0 ? '' : `! breaks a limit: ${names.join(', ')}\n`;
  console.say(
    `${found.result}; across in ${unitOf(open, found.across.id)}, down in ${unitOf(open, found.down.id)}\n${figuresTable(heads, rows)}\n${legend}`,
  );
}

function sideOf(open: OpenCase, written: string): Side {
  const match = /^([^=]+)=(-?[\d.]+)\.\.(-?[\d.]+)(?:\/(\d+))?$/u.exec(written);
  const [from, to, count] = [Number(match?.[2]), Number(match?.[3]), Number(match?.[4] ?? '5')];
  if (match === null || !Number.isFinite(from) || !Number.isFinite(to) || count < 2 || count > mostFigures) {
    throw new WrongUse(
      `A side of a table is written ID=FROM..TO or ID=FROM..TO/COUNT, with 2 to ${String(mostFigures)} figures; "${written}" was given.`,
    );
  }
  const input = open.model.graph.inputs.find((each) => each.id === inputOf(open, match[1] ?? ''));
  if (input === undefined) throw new WrongUse(`There is no input "${match[1] ?? ''}".`);
  const refused = [match[2] ?? '', match[3] ?? ''].flatMap((given) => outside(input, given));
  if (refused.length > 0) throw new Refusal(refused.map(problemSentence));
  return { id: input.id, figures: spaced(from, to, count) };
}

function unitOf(open: OpenCase, id: string): string {
  return unitLabel(open.model.graph.inputs.find((input) => input.id === id)?.entryUnit ?? '1') || 'plain numbers';
}
