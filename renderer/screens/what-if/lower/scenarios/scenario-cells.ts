import type { ScenarioTable } from '../../../../../src/index.ts';
import type { Cells } from '../../../waste/cells.ts';
import { brokenLimits } from './broken-limits.ts';
import type { ResultRow } from './result-rows.ts';
import type { InputRow } from './scenario-rows.ts';

/** Scenarios side by side as cells: figures in force, results as shown, and each result less that of the case. */
export function scenarioCells(
  { columns }: ScenarioTable,
  inputs: readonly InputRow[],
  results: readonly ResultRow[],
  readable: (unit: string) => string,
): Cells {
  const name = (label: string, where: string): string => (where === '' ? label : `${label}, ${where}`);
  const figure = (plain: string): string | number => (plain === '' ? '' : Number(plain));
  return [
    ['', 'unit', 'as the case stands', ...columns.flatMap(({ scenario }) => scenario?.label ?? [])],
    ...inputs.map(({ label, where, unit, base, cells }) => [
      name(label, where),
      readable(unit),
      figure(base),
      ...cells.map(({ view }) => figure(view.value)),
    ]),
    ...results.flatMap(({ label, where, unit, values, less }) => [
      [name(label, where), unit, ...values],
      [`${name(label, where)}, less the case`, unit, '', ...less.slice(1)],
    ]),
    ['limits broken', '', ...columns.map((column) => brokenLimits(column).join('; '))],
  ];
}
