import type { BreakEven } from '../../../../../src/index.ts';
import type { Cells } from '../../../waste/cells.ts';
import { type TieRow, likelyWords } from './tie-rows.ts';

/** The ties as cells, figures in full; several ties of one input stand in as many rows. */
export function tieCells(rows: readonly TieRow[], ties: readonly BreakEven[]): Cells {
  const heads = ['input', 'unit', 'today', 'ties at', 'beyond it', 'is that likely?', 'searched from', 'to'];
  return [
    heads,
    ...rows.flatMap((row) => {
      const tie = ties.find(({ id }) => id === row.id);
      if (tie === undefined) return [];
      const line = (at: number | string, wins: string, likely: string): Cells[number] => [
        row.name,
        row.unit,
        plain(tie.figure),
        typeof at === 'number' ? plain(at) : at,
        wins,
        likely,
        plain(tie.from),
        plain(tie.to),
      ];
      if (row.nearest === null) return [line('none', '', '')];
      const likely = row.likely === null ? '' : likelyWords[row.likely];
      return tie.crossings.map((at) => (at === row.nearest ? line(at, row.wins, likely) : line(at, '', '')));
    }),
  ];
}

/** Takes away what binary fractions add. */
function plain(value: number): number {
  return Number(value.toPrecision(12));
}
