import { freshSlots } from '../../src/kernel/tape/tape.ts';
import { twoWay } from '../../src/study/two-way.ts';
import { type BenchCase, placeOf, resultId, uncompiled } from './bench-case.ts';
import { fastest } from './fastest.ts';
import { interleaved } from './interleaved.ts';
import { type Measured, timesAsLong } from './measured.ts';
import { type Sides, figures, tablesOf } from './sides.ts';

/** Tables of 51 x 51 figures. Straight-line code works all steps out for every cell, so that all tables take it the same time. */
export function measureTable(bench: BenchCase): readonly Measured[] {
  const { open, tape, straight } = bench;
  const tables = tablesOf(bench);
  demandEqual(bench, tables.usual);
  demandEqual(bench, tables.hardest);
  const reference = fastest(straight, (run) => {
    const [cells, values] = [new Float64Array(figures * figures), freshSlots(tape)];
    return () => straightTable(run, values, bench, tables.usual, cells);
  });
  const table = ({ across, down }: Sides, of = open): unknown => twoWay(of, resultId, across, down);
  const { usual, withCompilation, hardest, prices, ...forms } = interleaved({
    ...reference.calls,
    usual: () => table(tables.usual),
    withCompilation: () => table(tables.usual, uncompiled(open)),
    hardest: () => table(tables.hardest),
    prices: () => table(tables.prices),
  });
  const line = reference.time(forms);
  return [
    timesAsLong('table51', named(tables.usual), usual, line),
    timesAsLong('table51WithCompilation', 'the same, its tape compiled first', withCompilation, line),
    timesAsLong('table51Hardest', `${named(tables.hardest)}, the hardest`, hardest, line),
    timesAsLong('table51OfPrices', named(tables.prices), prices, line),
  ];
}

function named({ down, across }: Sides): string {
  return `${figures} x ${figures} table over ${down.id} and ${across.id}`;
}

function straightTable(
  run: (values: Float64Array) => number,
  values: Float64Array,
  { tape }: BenchCase,
  { down, across }: Sides,
  cells: Float64Array,
): Float64Array {
  const [row, column] = [placeOf(tape, down.id), placeOf(tape, across.id)];
  let at = 0;
  for (const rowFigure of down.figures) {
    values[row.place] = rowFigure * row.factor;
    for (const columnFigure of across.figures) {
      values[column.place] = columnFigure * column.factor;
      cells[at] = run(values);
      at += 1;
    }
  }
  return cells;
}

function demandEqual(bench: BenchCase, sides: Sides): void {
  const cells = twoWay(bench.open, resultId, sides.across, sides.down).cells.flat();
  for (const { form, run } of bench.straight) {
    const own = straightTable(run, freshSlots(bench.tape), bench, sides, new Float64Array(cells.length));
    if (!cells.every((cell, at) => Object.is(cell, own[at]))) throw new Error(`The table ${form} is another`);
  }
}
