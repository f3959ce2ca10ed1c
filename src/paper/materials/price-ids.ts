/** What a route pays for a material whose price goes by tiers: for all it buys, and for the last tonne. */
export const averagePriceIdOf = (routeId: string, materialId: string): string =>
  `${routeId}.bought.${materialId}.averagePrice`;
export const marginalPriceIdOf = (routeId: string, materialId: string): string =>
  `${routeId}.bought.${materialId}.marginalPrice`;
export const boughtTonnageIdOf = (routeId: string, materialId: string): string =>
  `${routeId}.bought.${materialId}.tonnage`;
