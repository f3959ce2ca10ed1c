/** Where fresh water and effluent of a route stand, m3/t: one of them is given, the other closes the balance. */
export function waterIdsOf(routeId: string): { readonly freshId: string; readonly effluentId: string } {
  return { freshId: `${routeId}.water.fresh`, effluentId: `${routeId}.water.effluent` };
}
