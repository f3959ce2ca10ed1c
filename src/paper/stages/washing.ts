import { type Quantity, constant } from '../../kernel/expression/quantity.ts';

/** Share of the water that a washer or thickener takes out, from consistency c1 to c2: 1 - [c1 (1 - c2)]/[c2 (1 - c1)]. */
export function waterRemoved(consistencyIn: Quantity, consistencyOut: Quantity): Quantity {
  const left = consistencyIn.times(consistencyOut.complement());
  const right = consistencyOut.times(consistencyIn.complement());
  return left.dividedBy(right).complement();
}

/**
 * Net share of a component that leaves, when its share `passed` goes with the filtrate and a clarifier catches `caught` of that, the
 * rest returning to the feed: passed x caught / (1 - passed (1 - caught)).
 */
export function clarifiedLoss(passed: Quantity, caught: Quantity): Quantity {
  return passed.times(caught).dividedBy(passed.times(caught.complement()).complement());
}

export type Filtrate = 'clarifier' | 'dilution' | 'effluent';

export function filtrateLoss(filtrate: Filtrate, passed: Quantity, caught: Quantity): Quantity {
  if (filtrate === 'dilution') return constant('0');
  return filtrate === 'effluent' ? passed : clarifiedLoss(passed, caught);
}
