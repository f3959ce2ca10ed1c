import { scaleBand, scaleLinear } from 'd3-scale';
import type { GroupId, RouteHead, Spread } from './spread.ts';

/** One bar of the bridge, in whole cents so that its steps meet exactly. */
export interface BridgeBar {
  readonly key: string;
  readonly label: string;
  /** The figure as plain digits, and whether it is a difference (written with its sign) or a whole cost. */
  readonly digits: string;
  readonly isStep: boolean;
  /** The route whose paper the bar is made of: at either end its own, of a step the one that pays more. */
  readonly kind: RouteHead['kind'];
  readonly x: number;
  readonly width: number;
  readonly top: number;
  readonly bottom: number;
  /** Where the running cost stands after this bar, to draw the line to the next. */
  readonly level: number;
}

export interface BridgeLayout {
  readonly bars: readonly BridgeBar[];
  readonly ground: number;
  /** The cost at which the scale starts; zero when it starts on the ground. */
  readonly startsAt: number;
}

export interface BridgeSize {
  readonly width: number;
  readonly height: number;
  /** Room for the figures above and the names below the bars. */
  readonly above: number;
  readonly below: number;
}

const shortNames: Readonly<Record<GroupId, string>> = {
  fibre: 'Fibre',
  energy: 'Energy',
  chemicals: 'Chemicals',
  'water and residue': 'Water, residue',
  carbon: 'Carbon',
  'people and plant': 'People, plant',
  'machine effect': 'Machine',
};

/** Lays the bridge out; null while one of its figures cannot be worked out. */
export function layOutBridge(spread: Spread, size: BridgeSize): BridgeLayout | null {
  const { base, with: other, groups } = spread;
  const figures = [base.total, other.total, ...groups.map(({ difference }) => difference)];
  if (figures.some(({ shownPerTonne }) => shownPerTonne === '')) return null;
  const steps = spans(spread);
  const levels = steps.flatMap(({ from, to }) => [from, to]);
  const most = Math.max(...levels, 0);
  const least = Math.min(...levels.filter((level) => level !== 0), most);
  const startsAt = startOfScale(least, most);
  const ground = size.height - size.below;
  const y = scaleLinear([startsAt, most], [ground, size.above]);
  const x = scaleBand(
    steps.map(({ key }) => key),
    [0, size.width],
  )
    .paddingInner(0.42)
    .paddingOuter(0.36);
  const bars = steps.map(({ from, to, ...step }) => ({
    ...step,
    x: x(step.key) ?? 0,
    width: x.bandwidth(),
    top: y(Math.max(from, to)),
    bottom: step.isStep ? y(Math.min(from, to)) : ground,
    level: y(to),
  }));
  return { bars, ground, startsAt };
}

function spans({ base, with: other, groups }: Spread) {
  let level = Number(base.total.shownPerTonne);
  const start = {
    key: base.id,
    label: base.label,
    digits: base.total.shownPerTonne,
    isStep: false,
    kind: base.kind,
    from: 0,
    to: level,
  };
  const steps = groups.map((group) => {
    const from = level;
    const digits = group.difference.shownPerTonne;
    level += Number(digits);
    const { kind } = Number(digits) < 0 ? base : other;
    return { key: group.id, label: shortNames[group.id], digits, isStep: true, kind, from, to: level };
  });
  const end = {
    key: other.id,
    label: other.label,
    digits: other.total.shownPerTonne,
    isStep: false,
    kind: other.kind,
    from: 0,
    to: Number(other.total.shownPerTonne),
  };
  return [start, ...steps, end];
}

// A scale from zero would leave steps of a few per cent too thin to see, so the foot is torn off when the bridge stays well above it.
function startOfScale(least: number, most: number): number {
  if (least <= 0 || least < most * 0.4) return 0;
  const span = Math.max(most - least, most * 0.02);
  const wanted = least - span * 0.45;
  const step = 10 ** Math.floor(Math.log10(span));
  return Math.max(0, Math.floor(wanted / step) * step);
}
