import type { ComponentMass, StageBalance } from '../../../src/index.ts';
import type { Component } from './component-words.ts';
import { massOf } from './turns.ts';

/** Dry kg of one group at one single stage of a cascade, in 1,000 kg fed to the line. */
export interface LevelMasses {
  readonly feed: number;
  readonly rejects: number;
  readonly accepts: number;
}

export interface CascadeGroup {
  readonly name: string;
  readonly label: string;
  /** What of it enters the cascade. */
  readonly enters: number;
  readonly levels: readonly LevelMasses[];
}

// The components that part with the fibre and with the water are shown by the one of them that matters most.
const shownBy: Readonly<Record<string, Component>> = { fibre: 'fibre', water: 'ash' };

/** Every group of the stage with something in it; the fibre first. */
export function cascadeGroups(stage: StageBalance, enters: readonly ComponentMass[]): readonly CascadeGroup[] {
  const [first] = stage.levels;
  return (first?.groups ?? []).flatMap(({ name }, place): CascadeGroup[] => {
    const component = shownBy[name] ?? (name as Component);
    const mass = massOf(enters, component);
    const label = enters.find((each) => each.component === component)?.label ?? name;
    if (mass === 0) return [];
    const levels = stage.levels.map(({ groups }) => {
      const feed = (groups[place]?.feed ?? 0) * mass;
      const rejects = feed * (groups[place]?.rejected ?? 0);
      return { feed, rejects, accepts: feed - rejects };
    });
    return [{ name, label, enters: mass, levels }];
  });
}

export interface CascadeBox {
  readonly number: number;
  readonly x: number;
  /** Its accepts join the product instead of going back one stage. */
  readonly forward: boolean;
}

export interface CascadeLayout {
  readonly boxes: readonly CascadeBox[];
  readonly box: { readonly width: number; readonly height: number; readonly top: number };
  readonly product: number;
  readonly width: number;
  readonly height: number;
  /** How deep the way back of a stage runs, so that two never lie on one another. */
  readonly backAt: (number: number) => number;
}

const inlet = 76;
const outlet = 52;
// Room for two figures between two boxes, and for a name in each.
const gap = 42;
const narrowestStep = 104;

export function layOutCascade(stage: Pick<StageBalance, 'levels'>, width: number): CascadeLayout {
  const count = Math.max(stage.levels.length, 1);
  const step = Math.max((width - inlet - outlet) / count, narrowestStep);
  const box = { width: Math.min(step - gap, 108), height: 42, top: 66 };
  const boxes = stage.levels.map(({ number, forward }, place) => ({ number, forward, x: inlet + step * place }));
  const goesBack = boxes.some(({ number, forward }) => number > 1 && !forward);
  const under = box.top + box.height;
  return {
    boxes,
    box,
    product: 20,
    width: inlet + step * count - (step - box.width) + outlet,
    height: under + (goesBack ? 74 : 24),
    backAt: (number) => under + (number % 2 === 0 ? 42 : 66),
  };
}
