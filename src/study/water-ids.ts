import type { Route } from '../case/case.ts';

/** Where fresh water and effluent of a route stand: one of them is given, the other closes the balance. */
export function waterIdsOf({ id, water }: Route): { readonly freshId: string; readonly effluentId: string } {
  return water === 'effluent given'
    ? { freshId: `${id}.water.fresh`, effluentId: `${id}.effluent` }
    : { freshId: `${id}.machine.freshWater`, effluentId: `${id}.water.effluent` };
}
