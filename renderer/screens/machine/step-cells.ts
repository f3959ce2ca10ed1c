import type { MachineEffect } from '../../../src/index.ts';
import type { Cells } from '../waste/cells.ts';
import { stepColumns } from './steps-layout.ts';

export const viewNames = { soldOut: 'Sold out', ordersLimited: 'Orders limited' } as const;

/** The steps of both views as cells: what the second route saves, in millions a year. */
export function stepCells(effect: MachineEffect, unit: string): Cells {
  const views = ['soldOut', 'ordersLimited'] as const;
  return [
    [unit, ...stepColumns(effect.soldOut).map(({ label }) => label)],
    ...views.map((view) => [
      viewNames[view],
      ...stepColumns(effect[view]).map(({ digits }) => (digits === '' ? NaN : Number(digits))),
    ]),
  ];
}
