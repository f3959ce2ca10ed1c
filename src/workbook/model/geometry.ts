/** Every sheet begins with its title, a line on what it is, and the verdict of the checks; then come its heads. */
const headRow = 4;
export const firstRow = headRow + 1;

/** Columns of a sheet of calculation, counted from 1. */
export const valueColumn = 3;

/** Columns of the sheet of inputs. */
export const inputColumns = {
  label: 1,
  where: 2,
  value: 3,
  unit: 4,
  origin: 5,
  status: 6,
  low: 7,
  high: 8,
  least: 9,
  most: 10,
  factor: 11,
  inModel: 12,
  modelUnit: 13,
  exported: 14,
  changed: 15,
  source: 16,
  id: 17,
} as const;

/** The first year of the investment plan stands in this column. */
export const firstYearColumn = 3;
