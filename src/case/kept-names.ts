import type { Problem } from './problem.ts';

/**
 * Ids of inputs and results begin with the id of a route, or with one of these words: a route named "price" would take the place of what
 * electricity or effluent costs.
 */
export const keptFromRoutes: ReadonlySet<string> = new Set([
  'additive',
  'boiler',
  'capital',
  'carbon',
  'chemical',
  'collection',
  'destination',
  'difference',
  'effluent',
  'energy',
  'footprint',
  'freight',
  'fuel',
  'grid',
  'heat',
  'investment',
  'landfill',
  'machine',
  'material',
  'methane',
  'price',
  'product',
  'rate',
  'residue',
  'treatment',
  'wood',
]);

/** After the id of a route comes that of a line, or one of these words. */
export const keptFromLines: ReadonlySet<string> = new Set([
  'additive',
  'bought',
  'capital',
  'carbon',
  'charge',
  'chemical',
  'cost',
  'effluent',
  'electricity',
  'energy',
  'footprint',
  'freight',
  'fuel',
  'heat',
  'investment',
  'labour',
  'landfill',
  'machine',
  'maintenance',
  'methane',
  'product',
  'quality',
  'received',
  'recycled',
  'residue',
  'treatment',
  'water',
  'wood',
]);

/** Names that cannot be given because the program uses them itself. */
export function keptNameProblems(
  path: string,
  names: readonly (string | null)[],
  kept: ReadonlySet<string>,
): Problem[] {
  return names.flatMap((name, place): Problem[] => {
    if (name === null || !kept.has(name)) return [];
    const allowed = 'a name that the program does not use itself';
    return [{ kind: 'wrong form', path: `${path}.${String(place)}.id`, given: JSON.stringify(name), allowed }];
  });
}
