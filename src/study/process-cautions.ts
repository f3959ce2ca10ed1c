import { limitIdOf, qualities, qualityIdOf } from '../paper/quality-ids.ts';
import { lineCautions } from './line-cautions.ts';
import type { OpenCase } from './open-case.ts';
import type { ProcessCaution } from './process-caution.ts';
import { residueCautions } from './residue-cautions.ts';
import { strengthCautions } from './strength-cautions.ts';
import { tierCautions } from './tier-cautions.ts';

/** All that a technologist would remark on, line by line and for the case. */
export function processCautions(open: OpenCase): readonly ProcessCaution[] {
  return [
    ...lineCautions(open),
    ...residueCautions(open),
    ...services(open),
    ...strengthCautions(open),
    ...tierCautions(open),
    ...limits(open),
    ...refusals(open),
    ...memories(open),
  ];
}

function limits({ content, values }: OpenCase): readonly ProcessCaution[] {
  return content.routes.flatMap((route) =>
    qualities.flatMap(({ id, label, sense, unit }): ProcessCaution[] => {
      const limitId = limitIdOf(route.id, id);
      if (!values.has(limitId)) return [];
      const about = qualityIdOf(route.id, id);
      const [value, limit] = [values.number(about), values.number(limitId)];
      const scale = unit === '%' ? 100 : 1;
      const told = { about, where: route.label, label, value: value * scale, limit: limit * scale, unit };
      if (sense === 'at most') return value > limit ? [{ kind: 'above limit', ...told }] : [];
      return value < limit ? [{ kind: 'below limit', ...told }] : [];
    }),
  );
}

function refusals({ content, values }: OpenCase): readonly ProcessCaution[] {
  return content.materials.flatMap((material): ProcessCaution[] => {
    const id = `material.${material.id}.moistureRefusal`;
    const about = `material.${material.id}.moisture`;
    if (!values.has(id) || !(values.number(about) > values.number(id))) return [];
    return [
      {
        kind: 'too wet to accept',
        about,
        where: material.label,
        value: values.number(about) * 100,
        limit: values.number(id) * 100,
      },
    ];
  });
}

/** Defaults that were recalled and not seen are good enough to start from and not to quote. */
function memories({ model }: OpenCase): readonly ProcessCaution[] {
  const recalled = model.graph.inputs.filter(
    (input) => (input.given?.provenance ?? input.usual.provenance).status === 'memory',
  );
  const [first] = recalled;
  return first === undefined
    ? []
    : [{ kind: 'from memory', about: first.id, count: recalled.length, labels: recalled.map((input) => input.label) }];
}

/** More or fewer tonnes than one for the same service: figures of the route are not those of a tonne that it makes. */
function services({ content, values }: OpenCase): readonly ProcessCaution[] {
  return content.routes.flatMap((route): ProcessCaution[] => {
    const about = `${route.id}.machine.serviceFactor`;
    const value = values.number(about);
    return Number.isFinite(value) && value !== 1 ? [{ kind: 'other service', about, where: route.label, value }] : [];
  });
}
