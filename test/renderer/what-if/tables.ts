import type { Limit, WhatIfTable } from '../../../src/index.ts';

export const landfill: Limit = {
  id: 'landfill',
  label: 'Landfill permit',
  result: 'residue.all.wet.landfill',
  sense: 'at most',
  value: '4000',
  unit: 'wet-t/a',
  kind: 'hard',
};

/** Three columns and two rows; today in the left upper cell, the right lower one cannot be, the right upper one breaks a limit. */
export const smallTable: WhatIfTable = {
  result: 'difference.total',
  across: {
    id: 'pulp.price',
    label: 'Net price agreed',
    where: 'Kraft pulp',
    unit: 'EUR/adt',
    figures: [400, 450, 500],
    today: 0,
  },
  down: { id: 'moisture', label: 'Moisture', where: '', unit: '%', figures: [7.5, 10], today: 1 },
  cells: [
    [-90, -30, Number.NaN],
    [-60, 0, 30],
  ],
  contour: [{ from: [1, 1], to: [1.5, 0] }],
  broken: [
    [[], [], []],
    [[], [], [landfill]],
  ],
  points: [],
};

/** A plane over so many columns and rows; limits are broken on its high side. */
export function plane(size: number): WhatIfTable {
  const figures = Array.from({ length: size }, (_, place) => place);
  const cells = figures.map((row) => figures.map((column) => row + column - size));
  const side = { label: 'a', where: '', unit: '%', figures, today: 0 };
  return {
    result: 'difference.total',
    across: { ...side, id: 'a' },
    down: { ...side, id: 'b' },
    cells,
    contour: [],
    broken: cells.map((row) => row.map((value) => (value > size / 2 ? [landfill] : []))),
    points: [],
  };
}
