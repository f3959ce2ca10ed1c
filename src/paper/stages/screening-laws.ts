import { type Quantity, constant } from '../../kernel/expression/quantity.ts';

/**
 * Share of a component that one screen or cleaner rejects, at reject rate R of the fibre: E = R/(1 - Q + Q R), Q the separation
 * quotient, below 1 (Nelson 1981, from memory). Q = 0 splits as the fibre; Q towards 1 removes all.
 */
export function quotientRemoval(rejectRate: Quantity, quotient: Quantity): Quantity {
  return rejectRate.dividedBy(quotient.complement().plus(quotient.times(rejectRate)));
}

/** Plug flow by volume: E = R_v^beta, R_v the volume reject ratio. beta = 1 goes with the water, 0 is held back wholly. */
export function plugFlowRemoval(volumeRejectRate: Quantity, exponent: Quantity): Quantity {
  return volumeRejectRate.toThePower(exponent);
}

/** The volume reject ratio that goes with a fibre reject rate: R = R_v^beta_fibre, so R_v = R^(1/beta_fibre). */
export function volumeRejectRate(fibreRejectRate: Quantity, fibreExponent: Quantity): Quantity {
  return fibreRejectRate.toThePower(constant('1').dividedBy(fibreExponent));
}
