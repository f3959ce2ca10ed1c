import { type Quantity, constant } from '../../kernel/expression/quantity.ts';

/** A price that follows an index: all of one unit of money per tonne but the factor, which is a plain number. */
export interface ContractTerms {
  readonly index: Quantity;
  readonly factor?: Quantity;
  readonly addition?: Quantity;
  /** The price is never below the floor nor above the cap; where the two cross, the floor holds. */
  readonly floor?: Quantity;
  readonly cap?: Quantity;
}

/** max(floor, min(cap, factor x index + addition)), before any rebate; what is left out has no part in it. */
export function contractPrice({ index, factor, addition, floor, cap }: ContractTerms): Quantity {
  const followed = index.times(factor ?? constant('1')).plus(addition ?? constant('0', index.unit));
  const capped = cap === undefined ? followed : followed.lesserOf(cap);
  return floor === undefined ? capped : capped.greaterOf(floor);
}
