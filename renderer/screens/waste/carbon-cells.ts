import { shownLess } from '../../numbers/adding-up.ts';
import { carbonTotal, type Carbon, type ScopeRow } from './carbon-rows.ts';
import type { Cells } from './cells.ts';

import { routeNames, type Facing } from './route-names.ts';
import type { Scale } from './scales.ts';

/** The carbon table as cells: what is shown, with a row for every factor's value, unit, year, boundary, status and source. */
export function carbonCells(facing: Facing, rows: readonly ScopeRow[], scale: Scale, per: string): Cells {
  const names = routeNames(facing);
  const line = (label: string, base: Carbon | null, other: Carbon | null): (string | number)[] => {
    const [left, right] = [base?.amount ?? 0, other?.amount ?? 0];
    return [label, left, right, shownLess(right, left, scale.decimals)];
  };
  const heads = [`${scale.unit} CO2e ${per}`, names.base, names.with, 'differs'];
  const factorHeads = ['factor', 'value', 'unit', 'year', 'boundary', 'status', 'source'];
  return [
    [...heads, ...factorHeads],
    ...rows.flatMap((scope) => [
      line(scope.scope, scope.base, scope.with),
      ...scope.causes.flatMap((cause) => {
        const [first, ...others] = cause.factors.map(({ label, value, unit, year, boundary, status, source }) => [
          label,
          Number(value),
          unit,
          year,
          boundary,
          status === 'memory' ? 'from memory, to be verified' : status,
          source,
        ]);
        const amounts = line(cause.label, cause.base, cause.with);

        return [[...amounts, ...(first ?? [])], ...others.map((factor) => ['', '', '', '', ...factor])];
      }),
    ]),
    line('All three', carbonTotal(facing.base, scale), carbonTotal(facing.with, scale)),
  ];
}
