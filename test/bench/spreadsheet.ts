import { HyperFormula } from 'hyperformula';
import { freshSlots } from '../../src/kernel/tape/tape.ts';
import { twoWay } from '../../src/study/two-way.ts';
import { type BenchCase, placeOf, resultId } from './bench-case.ts';
import { cellText } from './cell-text.ts';
import { interleaved } from './interleaved.ts';
import { type Measured, timesAsFast } from './measured.ts';
import { figures, tablesOf } from './sides.ts';

/** Part of the table that the spreadsheet works out: all of it would take minutes. */
const part = 5;
const rounds = 5;
const closeEnough = 1e-9;

/**
 * The same table in a spreadsheet engine for JavaScript, as a person would otherwise do it: a cell a step, the two inputs typed in anew for
 * every cell of the table, with its evaluation held back until both stand, as its documentation recommends.
 */
export function measureSpreadsheet(bench: BenchCase): Measured {
  const { open, tape, result } = bench;
  const { down, across } = tablesOf(bench).usual;
  const [row, column] = [placeOf(tape, down.id), placeOf(tape, across.id)];
  const sheet = HyperFormula.buildFromArray(cellsOf(bench), { licenseKey: 'gpl-v3', functionArgSeparator: ';' });
  const set = (place: number, value: number): void => {
    sheet.setCellContents({ sheet: 0, row: place, col: 0 }, value);
  };
  const cell = (down: number, across: number): number => {
    sheet.suspendEvaluation();
    set(row.place, down * row.factor);
    set(column.place, across * column.factor);
    sheet.resumeEvaluation();
    return Number(sheet.getCellValue({ sheet: 0, row: result.slot, col: 0 }));
  };
  const partOf = <Figure>(all: readonly Figure[]): readonly Figure[] =>
    Array.from({ length: part }, (_, at) => all[Math.round((at * (figures - 1)) / (part - 1))]!);
  const table = (): readonly number[] =>
    partOf(down.figures).flatMap((one) => partOf(across.figures).map((other) => cell(one, other)));
  const ours = partOf(twoWay(open, resultId, across, down).cells).flatMap((cells) => partOf(cells));
  if (!table().every((value, at) => Math.abs(value - ours[at]!) <= closeEnough * Math.abs(ours[at]!))) {
    throw new Error('The spreadsheet gives another table');
  }
  const times = interleaved({ table, ours: () => twoWay(open, resultId, across, down) }, rounds);
  sheet.destroy();
  const whole = (times.table / part ** 2) * figures ** 2;
  return timesAsFast(
    'spreadsheetTable',
    `the table, against a spreadsheet engine (HyperFormula; ${part} x ${part} of its cells, times ${figures ** 2}/${part ** 2})`,
    times.ours,
    whole,
  );
}

/** One column: a row for each slot, so that the slots of a tape are its rows. */
function cellsOf({ tape }: BenchCase): (number | string)[][] {
  const values = freshSlots(tape);
  return Array.from({ length: tape.slots }, (_, slot) => [
    slot < tape.firstStep ? values[slot]! : `=${cellText(tape, slot, (read) => `A${read + 1}`)}`,
  ]);
}
