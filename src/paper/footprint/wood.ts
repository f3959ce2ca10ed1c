import { constant, total } from '../../kernel/expression/quantity.ts';
import { materialEntries } from '../catalogue.ts';
import { plainFigure } from '../figure.ts';
import type { Plant } from '../plant.ts';
import { type Sheet, notNegative } from '../sheet.ts';

/** Wood behind the virgin pulp of a tonne, solid cubic metres under bark. */
export function woodUse(sheet: Sheet, { route, lines }: Plant): void {
  const used = sheet.case.materials.filter(
    (material) =>
      material.origin === 'virgin' && lines.some((line) => line.grades.some((grade) => grade.material === material.id)),
  );
  const wood = used.map((material) => {
    const entry = material.like === undefined ? undefined : materialEntries.get(material.like);
    const figure = entry?.wood ?? plainFigure('4.5', '2.5', '6', 'm3-wood/adt');
    const perAdt = sheet.input({
      id: `material.${material.id}.wood`,
      label: 'Wood per air-dry tonne',
      where: material.label,
      unit: 'm3-wood/adt',
      figure,
      allowed: notNegative,
    });
    return sheet.graph
      .later(`${route.id}.bought.${material.id}`, 'bdt/t')
      .dividedBy(constant('0.9', 'bdt/adt'))
      .times(perAdt);
  });
  sheet.define(`${route.id}.wood`, 'Wood', 'm3-wood/t', total(wood, 'm3-wood/t'), {
    where: route.label,
    note: 'Air-dry tonnes of virgin pulp times the wood of each.',
  });
}
