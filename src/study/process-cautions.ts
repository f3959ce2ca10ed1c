import { limitIdOf, qualities, qualityIdOf } from '../paper/quality.ts';
import { drumBears, selfSustainingFire, usualEdgeLoad, usualLineYields } from '../paper/usual-results.ts';
import type { LineResult } from '../paper/line.ts';
import type { OpenCase } from './open-case.ts';

/** What a technologist would remark on about the process: where, what, and what is usual. Values in the unit the sentence names. */
export type ProcessCaution =
  | {
      readonly kind: 'unusual yield';
      readonly about: string;
      readonly where: string;
      readonly value: number;
      readonly low: number;
      readonly high: number;
    }
  | {
      readonly kind: 'unsuited to a drum';
      readonly about: string;
      readonly where: string;
      readonly component: 'wire' | 'wetStrength';
      readonly share: number;
    }
  | {
      readonly kind: 'burns badly';
      readonly about: string;
      readonly where: string;
      readonly label: string;
      readonly value: number;
    }
  | {
      readonly kind: 'edge load';
      readonly about: string;
      readonly where: string;
      readonly value: number;
      readonly low: number;
      readonly high: number;
    }
  | {
      readonly kind: 'above limit';
      readonly about: string;
      readonly where: string;
      readonly label: string;
      readonly value: number;
      readonly limit: number;
      readonly unit: '%' | 'kg/t';
    }
  | {
      readonly kind: 'too wet to accept';
      readonly about: string;
      readonly where: string;
      readonly value: number;
      readonly limit: number;
    }
  | {
      readonly kind: 'from memory';
      readonly about: string;
      readonly count: number;
      readonly labels: readonly string[];
    };

export function processCautions(open: OpenCase): readonly ProcessCaution[] {
  return [
    ...yields(open),
    ...drums(open),
    ...fires(open),
    ...edgeLoads(open),
    ...limits(open),
    ...refusals(open),
    ...memories(open),
  ];
}

interface Placed {
  readonly line: LineResult;
  readonly where: string;
  readonly machine: string;
  readonly isRecovered: boolean;
}

function allLines({ content, model }: OpenCase): readonly Placed[] {
  const origins = new Map(content.materials.map((material) => [material.id, material.origin]));
  return model.routes.flatMap(({ plant }) =>
    plant.lines.map((line) => ({
      line,
      where: `${plant.route.label}, ${line.label}`,
      machine: plant.route.machine ?? content.product.machine,
      isRecovered: line.grades.every((grade) =>
        ['pre-consumer', 'post-consumer'].includes(origins.get(grade.material) ?? ''),
      ),
    })),
  );
}

function yields(open: OpenCase): readonly ProcessCaution[] {
  return allLines(open).flatMap(({ line, where, machine, isRecovered }): ProcessCaution[] => {
    const usual = usualLineYields.get(machine);
    const about = `${line.id}.yield`;
    const value = open.values.number(about) * 100;
    if (!isRecovered || usual === undefined || !Number.isFinite(value) || (value >= usual.low && value <= usual.high))
      return [];
    return [{ kind: 'unusual yield', about, where, value, ...usual }];
  });
}

/** A drum is gentle: wires must be off before it, and wet-strength paper leaves it whole. */
function drums(open: OpenCase): readonly ProcessCaution[] {
  return allLines(open).flatMap(({ line, where }) =>
    line.stages.flatMap((stage, place) =>
      stage.kind !== 'drum pulper'
        ? []
        : (['wire', 'wetStrength'] as const).flatMap((component): ProcessCaution[] => {
            const share = enteringShare(open, line, place, component);
            return share > drumBears[component]
              ? [{ kind: 'unsuited to a drum', about: `${stage.id}.feed`, where, component, share: share * 100 }]
              : [];
          }),
    ),
  );
}

/** Of what enters the drum, not of what was fed to the stage before it. */
function enteringShare(
  { values }: OpenCase,
  line: LineResult,
  place: number,
  component: 'wire' | 'wetStrength',
): number {
  const before = line.stages[place - 1];
  const number = (id: string): number => (values.has(id) ? values.number(id) : 0);
  const drum = line.stages[place];
  if (before !== undefined && drum !== undefined)
    return number(`${before.id}.accepts.${component}`) / number(`${drum.id}.feed`);
  return line.grades.reduce((sum, { material }) => {
    const id = `${line.id}.grade.${material}.share`;
    return sum + (values.has(id) ? values.number(id) : 1) * number(`material.${material}.${component}`);
  }, 0);
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

function edgeLoads(open: OpenCase): readonly ProcessCaution[] {
  return allLines(open).flatMap(({ line, where }) =>
    line.stages.flatMap((stage): ProcessCaution[] => {
      const about = `${stage.id}.edgeLoad`;
      const value = open.values.has(about) ? open.values.number(about) : NaN;
      return value < usualEdgeLoad.low || value > usualEdgeLoad.high
        ? [{ kind: 'edge load', about, where, value, ...usualEdgeLoad }]
        : [];
    }),
  );
}

function limits({ content, values }: OpenCase): readonly ProcessCaution[] {
  return content.routes.flatMap((route) =>
    qualities.flatMap(({ id, label }): ProcessCaution[] => {
      const limitId = limitIdOf(route.id, id);
      if (!values.has(limitId)) return [];
      const about = qualityIdOf(route.id, id);
      const [value, limit] = [values.number(about), values.number(limitId)];
      const scale = id === 'ash' ? 100 : 1;
      return value > limit
        ? [
            {
              kind: 'above limit',
              about,
              where: route.label,
              label,
              value: value * scale,
              limit: limit * scale,
              unit: id === 'ash' ? '%' : 'kg/t',
            },
          ]
        : [];
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
