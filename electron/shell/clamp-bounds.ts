import type { Bounds } from './window-place.ts';

function overlap(one: Bounds, other: Bounds): number {
  const across = Math.min(one.x + one.width, other.x + other.width) - Math.max(one.x, other.x);
  const down = Math.min(one.y + one.height, other.y + other.height) - Math.max(one.y, other.y);
  return Math.max(0, across) * Math.max(0, down);
}

function between(least: number, value: number, most: number): number {
  return Math.max(least, Math.min(value, most));
}

/**
 * The bounds moved and cut so that the whole window lies on one display that is there: the one it lay on most, else the first.
 * Null where no display of any use is told. `areas` are what the displays have left beside the bars of the system.
 */
export function clampBounds(wanted: Bounds, areas: readonly Bounds[]): Bounds | null {
  const most = Math.max(...areas.map((area) => overlap(wanted, area)));
  const area = areas.find((candidate) => overlap(wanted, candidate) === most);
  if (area === undefined || area.width <= 0 || area.height <= 0) return null;
  const width = between(1, wanted.width, area.width);
  const height = between(1, wanted.height, area.height);
  const x = between(area.x, wanted.x, area.x + area.width - width);
  const y = between(area.y, wanted.y, area.y + area.height - height);
  return { x, y, width, height };
}
