import type { LineResult } from '../paper/line.ts';
import { drumBears, usualEdgeLoad, usualLineYields } from '../paper/usual-results.ts';
import { fedShare } from './fed-share.ts';
import type { OpenCase } from './open-case.ts';
import type { ProcessCaution } from './process-caution.ts';

/** What a technologist would remark on about the preparation lines. */
export function lineCautions(open: OpenCase): readonly ProcessCaution[] {
  return [...yields(open), ...drums(open), ...edgeLoads(open)];
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
function enteringShare(open: OpenCase, line: LineResult, place: number, component: 'wire' | 'wetStrength'): number {
  const before = line.stages[place - 1];
  const number = (id: string): number => (open.values.has(id) ? open.values.number(id) : 0);
  const drum = line.stages[place];
  if (before !== undefined && drum !== undefined)
    return number(`${before.id}.accepts.${component}`) / number(`${drum.id}.feed`);
  return fedShare(open, line, component);
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
