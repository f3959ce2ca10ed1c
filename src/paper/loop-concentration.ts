import { constant } from '../kernel/expression/quantity.ts';
import type { Effluent } from './effluent.ts';
import type { Plant } from './plant.ts';
import type { Sheet } from './sheet.ts';
import type { Water } from './water.ts';

export const dissolvedLoadIdOf = (routeId: string): string => `${routeId}.water.dissolvedLoad`;
export const loopConcentrationIdOf = (routeId: string): string => `${routeId}.water.concentration`;

// A mill that lets no water out keeps what dissolves until something gives way; the balance knows no end to that. A floor far below any
// effluent keeps the figure finite, and so high that no limit is taken for kept.
const leastEffluent = '0.01';

/**
 * What the water loop carries in steady state, mg/l = 1000 x dissolved load (kg/t) / effluent (m3/t): what dissolves and does not stay in the
 * product can only leave with the effluent. What is usual is not told, for no source is at hand.
 */
export function loopConcentration(sheet: Sheet, { route }: Plant, water: Water, effluent: Effluent): void {
  const where = route.label;
  const load = sheet.define(
    dissolvedLoadIdOf(route.id),
    'Dissolved matter that leaves with the effluent',
    'kg/t',
    effluent.dissolved.times(constant('1000', 'kg/bdt')),
    { where, note: 'What the lines dissolve and the product does not keep, of all lines.' },
  );
  sheet.define(
    loopConcentrationIdOf(route.id),
    'Dissolved matter in the water loop',
    'mg/l',
    load.dividedBy(water.effluent.greaterOf(constant(leastEffluent, 'm3/t'))).times(constant('1000', 'mg*m3/kg/l')),
    { where, note: `Dissolved load over effluent, taken as at least ${leastEffluent} m³ a tonne.` },
  );
}
