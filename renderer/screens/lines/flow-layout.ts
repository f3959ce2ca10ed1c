import type { InputView, LineBalance } from '../../../src/index.ts';
import { type Component, componentWords } from './component-words.ts';
import { type FlowScale, type FlowSize, componentsIn, scaleOf, widest } from './flow-scale.ts';
import { trace } from './mass-text.ts';
import { massOf, turnsOf } from './turns.ts';

/** The stream of one component, from what is fed to what goes on; its upper edge is straight. */
export interface Lane {
  readonly component: Component;
  readonly group: 'bulk' | 'dirt';
  readonly top: number;
  /** Height kept free for it: its widest place, or its name. */
  readonly height: number;
  readonly points: readonly { readonly x: number; readonly width: number }[];
}

/** A ribbon from one place to another: what leaves, or what is turned into something else. */
export interface Ribbon {
  readonly component: Component;
  readonly stage: number;
  readonly mass: number;
  readonly from: { readonly x: number; readonly y: number };
  readonly to: { readonly x: number; readonly y: number };
  readonly width: number;
}

export interface FlowLayout {
  readonly lanes: readonly Lane[];
  readonly leaving: readonly Ribbon[];
  readonly turning: readonly Ribbon[];
  readonly scale: FlowScale;
  /** Where the words above the bulk and above the dirt stand. */
  readonly notes: { readonly bulk: number; readonly dirt: number | null };
  readonly width: number;
  readonly height: number;
}

const noteHeight = 18;
// Places within the column of a stage: first something turns into something else, then something leaves.
const turnsAt = 0.08;
const turnedAt = 0.22;
const leavesAt = 0.28;
const pileInset = 8;
// A thinner stream would be a scratch across the picture; the table below has its figure all the same.
const thinnest = 0.5;

export function layOutFlow(
  balance: LineBalance,
  inputs: Readonly<Record<string, InputView>>,
  size: FlowSize,
): FlowLayout {
  const scale = scaleOf(balance, size);
  const { lanes, notes, foot } = lanesOf(balance, inputs, size, scale);
  const leaving = leavingOf(balance, lanes, size, scale, foot + size.gap * 2);
  const deepest = Math.max(foot, ...leaving.map(({ to, width }) => to.y + width));
  return {
    lanes,
    leaving,
    turning: turningOf(balance, inputs, lanes, size, scale),
    scale,
    notes,
    width: size.column * balance.stages.length,
    height: Math.ceil(deepest + size.gap * 2),
  };
}

function lanesOf(
  balance: LineBalance,
  inputs: Readonly<Record<string, InputView>>,
  size: FlowSize,
  scale: FlowScale,
): { readonly lanes: readonly Lane[]; readonly notes: FlowLayout['notes']; readonly foot: number } {
  const present = componentsIn(balance);
  let y = noteHeight;
  let dirtNote: number | null = null;
  const lanes = present.map((component): Lane => {
    const { group } = componentWords[component];
    if (group === 'dirt' && dirtNote === null) {
      dirtNote = y;
      y += noteHeight;
    }
    const height = Math.max(widest(balance.fed, balance.stages, component) * scale[group], size.line);
    const top = y;
    y += height + size.gap;
    return { component, group, top, height, points: pointsOf(balance, inputs, component, size.column, scale[group]) };
  });
  return { lanes, notes: { bulk: 0, dirt: dirtNote }, foot: y };
}

function pointsOf(
  { fed, stages }: LineBalance,
  inputs: Readonly<Record<string, InputView>>,
  component: Component,
  column: number,
  scale: number,
): Lane['points'] {
  let masses = fed;
  const points = [{ x: 0, width: massOf(fed, component) * scale }];
  stages.forEach((stage, place) => {
    const left = place * column;
    const enters = massOf(masses, component);
    const goesOn = massOf(stage.accepts, component);
    const turned = goesOn + massOf(stage.leaves, component);
    const gives = turnsOf(stage, masses, inputs).some(({ from }) => from === component);
    const step = left + column * (gives ? turnsAt : turnedAt);
    const leaves = left + column * leavesAt;
    points.push({ x: step, width: enters * scale }, { x: step, width: turned * scale });
    points.push({ x: leaves, width: turned * scale }, { x: leaves, width: goesOn * scale });
    masses = stage.accepts;
  });
  const last = points.at(-1)?.width ?? 0;
  return [...points, { x: column * stages.length, width: last }];
}

function leavingOf(
  { stages }: LineBalance,
  lanes: readonly Lane[],
  size: FlowSize,
  scale: FlowScale,
  pile: number,
): readonly Ribbon[] {
  return stages.flatMap((stage, place) => {
    let y = pile;
    return lanes.flatMap(({ component, group, top }): Ribbon[] => {
      const mass = massOf(stage.leaves, component);
      const width = mass * scale[group];
      if (mass < trace || width < thinnest) return [];
      const from = {
        x: size.column * (place + leavesAt),
        y: top + massOf(stage.accepts, component) * scale[group],
      };
      const to = { x: size.column * (place + 1) - pileInset, y };
      y += width;
      return [{ component, stage: place, mass, from, to, width }];
    });
  });
}

function turningOf(
  { fed, stages }: LineBalance,
  inputs: Readonly<Record<string, InputView>>,
  lanes: readonly Lane[],
  size: FlowSize,
  scale: FlowScale,
): readonly Ribbon[] {
  const laneOf = (component: Component): Lane | undefined => lanes.find((lane) => lane.component === component);
  return stages.flatMap((stage, place) => {
    const enters = stages[place - 1]?.accepts ?? fed;
    return turnsOf(stage, enters, inputs).flatMap((turn): Ribbon[] => {
      const from = laneOf(turn.from);
      const to = laneOf(turn.to);
      if (from === undefined || to === undefined || turn.mass < trace) return [];
      const turned = (lane: Lane): number =>
        lane.top + (massOf(stage.accepts, lane.component) + massOf(stage.leaves, lane.component)) * scale[lane.group];
      // Between the two scales a ribbon has no width of its own; it is drawn as wide as where it comes from.
      const width = turn.mass * scale[from.group];
      const end = Math.max(turned(to) - turn.mass * scale[to.group], to.top);
      return [
        {
          component: turn.from,
          stage: place,
          mass: turn.mass,
          from: { x: size.column * (place + turnsAt), y: turned(from) },
          to: { x: size.column * (place + turnedAt), y: end },
          width: from.group === to.group ? width : Math.min(width, turn.mass * scale[to.group]),
        },
      ];
    });
  });
}
