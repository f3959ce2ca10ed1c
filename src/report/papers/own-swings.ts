import type { Swing } from '../../study/sensitivity.ts';
import type { PaperFacts } from './paper-facts.ts';

/**
 * What moves the difference most, without the figures of the paper machine: both routes run the same machine, and a figure of it that
 * moves in one route alone is nothing that could happen.
 */
export function ownSwings({ swings, spread }: PaperFacts): readonly Swing[] {
  const machines = [spread.base.id, spread.with.id].map((route) => `${route}.machine.`);
  return swings.judged.filter(({ id }) => !machines.some((machine) => id.startsWith(machine)));
}
