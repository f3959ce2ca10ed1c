import type { Material } from '../../case/case.ts';
import { total } from '../../kernel/expression/quantity.ts';
import { materialEntries } from '../catalogue.ts';
import { type Flow, componentLabels, flowOf } from '../components.ts';
import { type Sheet, fraction } from '../sheet.ts';

/** What a bought material is made of, as shares of its dry mass. Fibre takes up what the others leave, so that the whole is always 1. */
export function compositionOf(sheet: Sheet, material: Material): Flow {
  const entry = material.like === undefined ? undefined : materialEntries.get(material.like);
  const others = flowOf((component) =>
    component === 'fibre'
      ? sheet.constant('0')
      : sheet.optional({
          id: `material.${material.id}.${component}`,
          label: componentLabels[component],
          where: material.label,
          unit: '1',
          entry: '%',
          figure: entry?.composition[component],
          allowed: fraction,
        }),
  );
  const rest = total(Object.values(others), '1').complement().within({ least: '0' });
  const fibre = sheet.define(`material.${material.id}.fibre`, 'Fibre', '1', rest, {
    where: material.label,
    note: 'What the other components leave of the dry mass.',
    shownIn: '%',
  });
  return { ...others, fibre };
}
