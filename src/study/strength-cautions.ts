import { gainIdOf, strengthProperties } from '../paper/strength-properties.ts';
import type { OpenCase } from './open-case.ts';
import type { ProcessCaution } from './process-caution.ts';

/** Refiners that add nothing to strength because only their whole draw is known, where somebody says what net energy adds. */
export function strengthCautions({ model, values }: OpenCase): readonly ProcessCaution[] {
  const given = new Set(model.graph.inputs.map(({ id }) => id));
  if (!strengthProperties.some(({ id }) => given.has(gainIdOf(id, 'perRefining')))) return [];
  return model.routes.flatMap(({ plant }) => {
    if (!values.has(`${plant.route.id}.quality.refiningEnergy`)) return [];
    return plant.lines.flatMap((line) =>
      line.stages
        .filter(({ id, kind }) => kind === 'refiner' && !given.has(`${id}.net`))
        .map(({ id, label }): ProcessCaution => ({
          kind: 'gross refining',
          about: `${id}.electricity`,
          where: `${plant.route.label}, ${line.label}, ${label}`,
        })),
    );
  });
}
