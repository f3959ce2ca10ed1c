import { npvId } from '../../study/investment/npv-id.ts';
import type { ModelCells } from '../model/model-cells.ts';

/** A result beside what the program made of it when the workbook was written. */
export interface ProgramCheck {
  readonly id: string;
  readonly label: string;
  readonly where: string;
  readonly formula: string;
  readonly exported: number;
}

/** The results that matter: whole costs, footprints, their differences, and the value of the plan. */
export function programChecks(cells: ModelCells, sheet: string): readonly ProgramCheck[] {
  const { content, model } = cells.open;
  const ids = [
    ...content.routes.flatMap(({ id }) => [`${id}.cost.total`, `${id}.costPerYear.total`, `${id}.footprint.total`]),
    model.difference.totalId,
    model.difference.totalPerYearId,
    'difference.footprint.total',
    npvId,
  ];
  return ids.flatMap((id): readonly ProgramCheck[] => {
    const link = cells.link(id, sheet);
    if (link === null || typeof link.result !== 'number') return [];
    const { declaration } = cells.node(model.graph.positions.get(id) ?? 0);
    return [
      {
        id,
        label: declaration?.label ?? id,
        where: declaration?.where ?? '',
        formula: link.formula,
        exported: link.result,
      },
    ];
  });
}
