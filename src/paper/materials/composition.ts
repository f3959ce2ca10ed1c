import type { Material } from '../../case/case.ts';
import { type Quantity, total } from '../../kernel/expression/quantity.ts';
import { materialEntries } from '../catalogue.ts';
import { type Component, type Flow, componentLabels, flowOf } from '../components.ts';
import { type Sheet, fraction } from '../sheet.ts';

/** EN 643: non-paper components, and with them paper that is unwanted. */
export const unwanted = ['lights', 'heavies', 'wire', 'wetStrength'] as const;
export type Unwanted = (typeof unwanted)[number];
/** What can be found in a delivery, and then stands in the place of what its grade usually holds. */
const findable = [...unwanted, 'ash'] as const;

/** What a bought material is made of, as shares of its dry mass. Fibre takes up what the others leave, so that the whole is always 1. */
export function compositionOf(sheet: Sheet, material: Material): Flow {
  const entry = material.like === undefined ? undefined : materialEntries.get(material.like);
  const usual = flowOf((component) =>
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
  const others = withFound(sheet, material, usual);
  const rest = total(Object.values(others), '1').complement().within({ least: '0' });
  const fibre = sheet.define(`material.${material.id}.fibre`, 'Fibre', '1', rest, {
    where: material.label,
    note: 'What the other components leave of the dry mass.',
    shownIn: '%',
  });
  return { ...others, fibre };
}

/**
 * A delivery that was looked at: what was found of each kind takes the place of what the grade usually holds, and the paper of the grade
 * makes up the rest: (1 - sum u) x paper + u by kind, paper being the grade without those kinds. Nothing was found of a kind not named.
 */
function withFound(sheet: Sheet, material: Material, usual: Flow): Flow {
  const idOf = (kind: Component): string => `material.${material.id}.found.${kind}`;
  const kinds: readonly Component[] = findable.filter((kind) => sheet.isGiven(idOf(kind)));
  if (kinds.length === 0) return usual;
  const found = new Map<Component, Quantity>(
    kinds.map((kind) => [
      kind,
      sheet.input({
        id: idOf(kind),
        label: `${componentLabels[kind]}, found`,
        where: material.label,
        unit: '1',
        entry: '%',
        allowed: fraction,
      }),
    ]),
  );
  const paper = sheet.define(
    `material.${material.id}.paper`,
    'Paper of the grade',
    '1',
    total([...found.values()], '1')
      .complement()
      .within({ least: '0' })
      .dividedBy(
        total(
          kinds.map((kind) => usual[kind]),
          '1',
        ).complement(),
      ),
    {
      where: material.label,
      note: 'What was found leaves this much room, over the same share of the grade as it usually is.',
      shownIn: '%',
    },
  );
  return flowOf((component) => found.get(component) ?? usual[component].times(paper));
}
