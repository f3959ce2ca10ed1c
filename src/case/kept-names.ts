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
  'destination',
  'difference',
  'effluent',
  'machine',
  'material',
  'price',
  'product',
  'rate',
  'residue',
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
  'heat',
  'labour',
  'machine',
  'maintenance',
  'product',
  'received',
  'residue',
  'water',
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
