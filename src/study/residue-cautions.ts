import { selfSustainingFire } from '../paper/usual-results.ts';
import type { OpenCase } from './open-case.ts';
import type { ProcessCaution } from './process-caution.ts';

/** What a technologist would remark on about residues in the own boiler. */
export function residueCautions(open: OpenCase): readonly ProcessCaution[] {
  return [...fires(open), ...coldBoilers(open)];
}

function fires(open: OpenCase): readonly ProcessCaution[] {
  return open.model.routes.flatMap(({ plant, residues }) =>
    residues.flatMap((residue): ProcessCaution[] => {
      const about = `${plant.route.id}.residue.${residue.stream}.firedValue`;
      const burned = residue.parts.some(
        (part) =>
          part.destination.kind === 'own boiler' &&
          open.values.number(`${plant.route.id}.residue.${residue.stream}.wet.${part.destination.id}`) > 0,
      );
      const value = burned && open.values.has(about) ? open.values.number(about) : NaN;
      return value < selfSustainingFire
        ? [{ kind: 'burns badly', about, where: plant.route.label, label: residue.label, value }]
        : [];
    }),
  );
}

/** All residues of a route together can take more heat from its boiler than they give. */
function coldBoilers({ content, values }: OpenCase): readonly ProcessCaution[] {
  return content.routes.flatMap((route): ProcessCaution[] => {
    const about = `${route.id}.heat.fromResidues`;
    const value = values.number(about);
    return value < 0 ? [{ kind: 'heat below nothing', about, where: route.label, value }] : [];
  });
}
