import { type OpenCase, type Side, formatNumber, mostFigures, spaced, twoWay, unitLabel } from '../index.ts';
import { figuresTable } from '../report/text-table.ts';
import { type Console, WrongUse } from './console.ts';
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
  if (options.json === true) {
    console.say(`${JSON.stringify(found, null, 2)}\n`);
    return;
  }
  const number = (value: number): string => formatNumber(value, { locale: console.locale, significant: 6 });
  const heads = [`${found.down.id} \\ ${found.across.id}`, ...found.across.figures.map(number)];
  const rows = found.cells.map((cells, r) => [
    number(found.down.figures[r] ?? NaN),
    ...cells.map((cell) => formatNumber(cell, { locale: console.locale, decimals: 2 })),
  ]);
  console.say(
    `${found.result}; across in ${unitOf(open, found.across.id)}, down in ${unitOf(open, found.down.id)}\n${figuresTable(heads, rows)}\n`,
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
  return { id: inputOf(open, match[1] ?? ''), figures: spaced(from, to, count) };
}

function unitOf(open: OpenCase, id: string): string {
  return unitLabel(open.model.graph.inputs.find((input) => input.id === id)?.entryUnit ?? '1') || 'plain numbers';
}
