import type { ComponentMass } from '../../../src/index.ts';
import { trace } from './mass-text.ts';

const most = 4;

/** What is listed of what leaves a stage, largest first: all of it on demand, else the largest and the fibre among it. */
export function leavesShown(leaves: readonly ComponentMass[], all: boolean): readonly ComponentMass[] {
  const leaving = leaves.filter(({ mass }) => mass > 0).sort((a, b) => b.mass - a.mass);
  if (all) return leaving;
  const fibre = leaving.filter(({ component, mass }) => component === 'fibre' && mass >= trace);
  const others = leaving.filter(({ component, mass }) => component !== 'fibre' && mass >= trace);
  return [...fibre, ...others.slice(0, most - fibre.length)].sort((a, b) => b.mass - a.mass);
}
