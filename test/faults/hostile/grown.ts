import type { Dice } from '../../support/dice.ts';

interface Part {
  id: string;
}
interface Line extends Part {
  stages: Part[];
}
interface Route extends Part {
  lines: Line[];
}

// Up to just above what the form of a case allows: there the reader must still answer in time.
const mostRoutes = 21;
const mostLines = 41;
const mostStages = 61;

function copies<Item extends Part>(dice: Dice, items: readonly Item[], count: number): Item[] {
  return Array.from({ length: count }, (_, place) => ({
    ...structuredClone(dice.pick(items)),
    id: `c${String(place)}`,
  }));
}

/** A case of the right form that has grown: routes, lines or stages by the dozen, copied from its own. */
export function grown(dice: Dice, cases: readonly string[]): string {
  const content = JSON.parse(dice.pick(cases)) as { routes: Route[]; inputs: object };
  if (dice.chance(0.4))
    content.routes = [...content.routes, ...copies(dice, content.routes, dice.whole(1, mostRoutes))];
  for (const route of content.routes) {
    if (dice.chance(0.3)) route.lines = [...route.lines, ...copies(dice, route.lines, dice.whole(1, mostLines))];
    for (const line of route.lines) {
      if (dice.chance(0.3)) line.stages = [...line.stages, ...copies(dice, line.stages, dice.whole(1, mostStages))];
    }
  }
  return JSON.stringify(content);
}
