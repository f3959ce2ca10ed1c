import { type Markup, element } from './markup.ts';

const dot = (cx: number, cy: number): Markup => element('circle', { cx, cy, r: 0.95, fill: '#000' });

/** Recovered paper as it is printed: black flecks on white. Every picture carries its own, so that it can be lifted out alone. */
export function fleckPattern(id: string): Markup {
  const size = { id, width: 6, height: 6, patternUnits: 'userSpaceOnUse' };
  const ground = element('rect', { width: 6, height: 6, fill: '#fff' });
  return element('defs', {}, element('pattern', size, ground, dot(1.5, 1.5), dot(4.5, 4.5)));
}
