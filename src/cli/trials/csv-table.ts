import { byteOrderMark, csvCells } from '../../report/csv-cells.ts';
import type { TrialTable } from './trial-table.ts';

/** The table as comma-separated values, in the numbers of a region. */
export function csvTable(locale: string): TrialTable {
  const { text, number, row } = csvCells(locale);
  return {
    begin: (heads) => `${byteOrderMark}${row(heads.map(text))}`,
    rows: (rows) => rows.map((cells) => row(cells.map(number))).join(''),
    end: () => '',
  };
}
