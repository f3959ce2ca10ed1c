import type { LineBalance } from '../../../src/index.ts';
import { type Component, componentOrder, componentWords } from './component-words.ts';
import { massOf } from './turns.ts';

/** How large the picture is drawn; widths of streams and heights of lanes in pixels. */
export interface FlowSize {
  readonly column: number;
  /** Width of all bulk, and of all dirt, where they are at their widest. */
  readonly bulk: number;
  readonly dirt: number;
  /** Height that the name of a lane needs. */
  readonly line: number;
  readonly gap: number;
}

export interface FlowScale {
  /** Pixels per kilogram. */
  readonly bulk: number;
  readonly dirt: number;
  /** How many times larger dirt is drawn; a round number, because it is printed. */
  readonly factor: number;
}

const roundFactors = [1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 15, 20, 25, 30, 40, 50, 60, 80, 100, 150, 200];

/** Whatever is fed, made on the way or left at the end; what is nothing everywhere has no lane. */
export function componentsIn({ fed, stages }: LineBalance): readonly Component[] {
  return componentOrder.filter((component) => widest(fed, stages, component) > 0);
}

export function scaleOf(balance: LineBalance, size: FlowSize): FlowScale {
  const sum = (group: 'bulk' | 'dirt'): number =>
    componentsIn(balance)
      .filter((component) => componentWords[component].group === group)
      .reduce((mass, component) => mass + widest(balance.fed, balance.stages, component), 0);
  const bulk = size.bulk / Math.max(sum('bulk'), 1);
  const most = size.dirt / Math.max(sum('dirt'), Number.EPSILON) / bulk;
  const factor = roundFactors.filter((each) => each <= most).at(-1) ?? 1;
  return { bulk, dirt: bulk * factor, factor };
}

/** The most there is of a component at any place of the line. */
export function widest(fed: LineBalance['fed'], stages: LineBalance['stages'], component: Component): number {
  const within = stages.map(({ accepts, leaves }) => massOf(accepts, component) + massOf(leaves, component));
  return Math.max(massOf(fed, component), ...within);
}
