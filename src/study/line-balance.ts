import { type Component, componentLabels, components } from '../paper/components.ts';
import { residueEntries } from '../paper/catalogue.ts';
import type { LineResult } from '../paper/line.ts';
import type { StageResult } from '../paper/stages/stage.ts';
import { fedShare } from './fed-share.ts';
import type { OpenCase } from './open-case.ts';

/** Mass of one component, in dry kilograms per 1,000 kg fed to the line, and the quantity it stands in ("" where it is nothing). */
export interface ComponentMass {
  readonly component: Component;
  readonly label: string;
  readonly mass: number;
  readonly id: string;
}

/** One single stage of a cascade. Shares are fractions; feeds are gross, per unit of a group fed to the cascade. */
export interface LevelBalance {
  readonly number: number;
  /** Its accepts go to product, not back one stage. */
  readonly forward: boolean;
  readonly fibreRejected: number;
  readonly volumeRejected: number;
  readonly rejectConsistency: number;
  readonly acceptConsistency: number;
  /** Components that part alike: "fibre" and "water" with what follows them, and those with a law of their own. */
  readonly groups: readonly {
    readonly name: string;
    readonly label: string;
    readonly feed: number;
    readonly rejected: number;
  }[];
}

export interface StageBalance {
  readonly id: string;
  readonly stage: string;
  readonly label: string;
  readonly kind: string;
  readonly entersTotal: number;
  readonly accepts: readonly ComponentMass[];
  readonly leaves: readonly ComponentMass[];
  readonly leavesTotal: number;
  /** Where what leaves goes: stream ids with their labels and masses. */
  readonly streams: readonly { readonly id: string; readonly label: string; readonly mass: number }[];
  /** Per tonne of product. */
  readonly electricity: number;
  readonly heat: number;
  readonly levels: readonly LevelBalance[];
}

export interface LineBalance {
  readonly route: string;
  readonly line: string;
  readonly label: string;
  readonly routeLabel: string;
  readonly yield: number;
  readonly fibreYield: number;
  /** Bone-dry tonnes fed per tonne of product. */
  readonly feed: number;
  readonly fed: readonly ComponentMass[];
  readonly stages: readonly StageBalance[];
  /** What goes to the blend chest. */
  readonly stock: readonly ComponentMass[];
  /** kWh per bdt fed; NaN, in JSON null, where nothing is fed. */
  readonly electricityPerFeed: number;
  readonly leavesTotal: number;
}

const perThousand = 1000;

/** The balance of a line, stage by stage and component by component; null where the case has no such line. */
export function lineBalance(open: OpenCase, routeId: string, lineId: string): LineBalance | null {
  const route = open.model.routes.find((each) => each.plant.route.id === routeId);
  const line = route?.plant.lines.find((each) => each.id === `${routeId}.${lineId}`);
  if (route === undefined || line === undefined) return null;
  const { values } = open;
  const feed = values.number(`${line.id}.feed`);
  const stages = line.stages.map((stage) => stageBalance(open, line, stage));
  const fed = components.map((component) => fedMass(open, line, component));
  const electricity = stages.reduce((sum, stage) => sum + stage.electricity, 0);
  return {
    route: routeId,
    line: lineId,
    label: line.label,
    routeLabel: route.plant.route.label,
    yield: values.number(`${line.id}.yield`),
    fibreYield: values.number(`${line.id}.fibreYield`),
    feed,
    fed,
    stages,
    stock: stages.at(-1)?.accepts ?? fed,
    electricityPerFeed: electricity / feed,
    leavesTotal: stages.reduce((sum, stage) => sum + stage.leavesTotal, 0),
  };
}

function fedMass(open: OpenCase, line: LineResult, component: Component): ComponentMass {
  const [only, ...more] = line.grades;
  const id = `material.${only?.material ?? ''}.${component}`;
  return {
    component,
    label: componentLabels[component],
    mass: fedShare(open, line, component) * perThousand,
    id: more.length === 0 && open.values.has(id) ? id : '',
  };
}

function stageBalance(open: OpenCase, line: LineResult, stage: StageResult): StageBalance {
  const { values } = open;
  const masses = (what: 'accepts' | 'rejects'): readonly ComponentMass[] =>
    components.map((component) => {
      const id = `${stage.id}.${what}.${component}`;
      const present = values.has(id);
      return {
        component,
        label: componentLabels[component],
        mass: present ? values.number(id) * perThousand : 0,
        id: present ? id : '',
      };
    });
  const leaves = masses('rejects');
  const enters = values.number(`${stage.id}.feed`);
  const streams = new Map<string, number>();
  for (const { component, mass } of leaves) {
    const stream = stage.streamOf(component);
    if (mass !== 0) streams.set(stream, (streams.get(stream) ?? 0) + mass);
  }
  return {
    id: stage.id,
    stage: stage.id.slice(line.id.length + 1),
    label: stage.label,
    kind: stage.kind,
    entersTotal: enters * perThousand,
    accepts: masses('accepts'),
    leaves,
    leavesTotal: leaves.reduce((sum, each) => sum + each.mass, 0),
    streams: [...streams].map(([id, mass]) => ({ id, mass, label: residueEntries.get(id)?.label ?? 'Effluent' })),
    electricity: values.number(`${stage.id}.electricityUse`),
    heat: values.number(`${stage.id}.heatUse`),
    levels: levelsOf(open, stage),
  };
}

function levelsOf({ values }: OpenCase, { id, cascade }: StageResult): readonly LevelBalance[] {
  return (cascade?.forward ?? []).map((forward, k): LevelBalance => {
    const at = `${id}.level.${String(k + 1)}`;
    const of = (name: string): number => values.number(`${at}.${name}`);
    const groups = cascade?.partings.map(({ name, label }) => ({
      name,
      label,
      feed: of(`feed.${name}`),
      rejected: name === 'fibre' ? of('fibreRejected') : of(`rejects.${name}`),
    }));
    return {
      number: k + 1,
      forward,
      fibreRejected: of('fibreRejected'),
      volumeRejected: of('volumeRejected'),
      rejectConsistency: of('rejectConsistency'),
      acceptConsistency: of('acceptConsistency'),
      groups: groups ?? [],
    };
  });
}
