import type { Family } from './family.ts';
import { normalCumulative } from './normal.ts';
import { demandRising, within } from './ranges.ts';

/** Every value from low to high alike. */
export function uniform(low: number, high: number): Family {
  demandRising(low, high);
  const width = high - low;
  return {
    sampler: () => (score) => within(low, low + width * normalCumulative(score), high),
    mean: () => low + width / 2,
    deviation: () => width / Math.sqrt(12),
  };
}
