import { leastZoom, mostZoom } from '../preferences-schema.ts';

// The steps of common browsers within the bounds (common practice, no source).
const steps = [leastZoom, 67, 75, 80, 90, 100, 110, 125, 150, 175, mostZoom];

/** The next step of the zoom, in percent; at either end it stays. */
export function nextZoom(now: number, direction: 'in' | 'out'): number {
  const next = direction === 'in' ? steps.find((step) => step > now) : steps.findLast((step) => step < now);
  return next ?? now;
}
