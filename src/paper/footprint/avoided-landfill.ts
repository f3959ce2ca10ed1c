import { total } from '../../kernel/expression/quantity.ts';
import { noFlow, scaleFlow } from '../components.ts';
import type { Plant } from '../plant.ts';
import type { Sheet } from '../sheet.ts';
import { degradableCarbon, methaneOfCarbon } from './landfill-methane.ts';

export const avoidedLandfillIdOf = (routeId: string): string => `${routeId}.landfill.avoidedMemo`;

/**
 * A memo that no sum takes in: the methane that the bought recovered paper would let out if it were landfilled instead. Nobody knows
 * where it would go, and by the cut-off rule its earlier life ends before it is collected.
 */
export function avoidedLandfill(sheet: Sheet, { route, mill }: Plant): void {
  const recovered = sheet.case.materials.filter(
    ({ id, origin }) =>
      (origin === 'post-consumer' || origin === 'pre-consumer') &&
      route.lines.some((line) => line.recipe.some((grade) => grade.material === id)),
  );
  const carbon = recovered.map(({ id }) => {
    const bought = sheet.graph.later(`${route.id}.bought.${id}`, 'bdt/t');
    return degradableCarbon(sheet, scaleFlow(mill.compositions.get(id) ?? noFlow('1'), bought));
  });
  const label = 'Memo, not counted: landfill that the recovered paper might else have met';
  sheet.define(avoidedLandfillIdOf(route.id), label, 'kgCO2e/t', methaneOfCarbon(sheet, total(carbon, 'tC/t')), {
    where: route.label,
    note: 'Degradable carbon of the recovered paper bought, through the same decay as the residues, all time. It lies outside the boundary and is in no sum.',
  });
}
