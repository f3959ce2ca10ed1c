import type { BreakEven } from '../../../../../src/index.ts';
import type { Cells } from '../../../waste/cells.ts';
import { type TieRow, likelyWords } from './tie-rows.ts';

/** The ties as cells, figures in full; several ties of one input stand in as many rows. `at` heads where they are. */
export function tieCells(rows: readonly TieRow[], ties: readonly BreakEven[], at: string): Cells {
  const heads = ['input', 'unit', 'today', at, 'beyond it', 'is that likely?', 'searched from', 'to'];
  return [
    heads,
    ...rows.flatMap((row) => {
      const tie = ties.find(({ id }) => id === row.id);
      if (tie === undefined) return [];
      const line = (place: number | string, wins: string, likely: string): Cells[number] => [
        row.name,
        row.unit,
        plain(tie.figure),
        typeof place === 'number' ? plain(place) : place,
        wins,
        likely,
        plain(tie.from),
        plain(tie.to),
      ];
      if (row.nearest === null) return [line('none', '', '')];
      const likely = row.likely === null ? '' : likelyWords[row.likely];
      return tie.crossings.map((place) =>
        place === row.nearest ? line(place, row.wins, likely) : line(place, '', ''),
      );
    }),
  ];
}

/** Takes away what binary fractions add. */
function plain(value: number): number {
  return Number(value.toPrecision(12));
}
