import { type Quantity, constant } from '../kernel/expression/quantity.ts';

/** What is laid down at once, and how its carbon decays. Shares and fractions are plain numbers. */
export interface Deposit {
  /** Mass laid down, any unit of mass: the methane comes in kg per tonne of it. */
  readonly mass: Quantity;
  /** Degradable organic carbon, tC per unit of that mass: on wet mass if the mass is wet, on dry mass if it is dry. */
  readonly carbon: Quantity;
  /** DOCf: the part of that carbon which ever decomposes. */
  readonly decomposes: Quantity;
  /** MCF: the part that does so without air. */
  readonly withoutAir: Quantity;
  /** F: methane in the gas, by volume. */
  readonly methaneShare: Quantity;
  /** R: methane caught and burned. */
  readonly recovered: Quantity;
  /** OX: methane oxidised in the cover. */
  readonly oxidised: Quantity;
  /** k, 1/a. */
  readonly rate: Quantity;
}

/** Euler's number to the digits that the exact reading keeps. */
const euler = constant('2.718281828459045235360287471352662498');
// Molar masses of methane and carbon, 16/12; a tonne is 1000 kg.
const methanePerCarbon = constant('16', 'kgCH4/tC').times(constant('1000')).dividedBy(constant('12'));

/**
 * Methane that a deposit lets out over all time, kgCH4: W DOC DOCf MCF F 16/12 (1 - R)(1 - OX), first-order decay of the IPCC guidelines
 * of 2006, volume 5, chapter 3 (from memory; the form agrees with the one of the Clean Development Mechanism).
 */
export function methaneOfDeposit(deposit: Deposit): Quantity {
  const { mass, carbon, decomposes, withoutAir, methaneShare, recovered, oxidised } = deposit;
  const formed = mass.times(carbon).times(decomposes).times(withoutAir).times(methaneShare).times(methanePerCarbon);
  return formed.times(recovered.complement()).times(oxidised.complement());
}

/** What of it is let out within the first years, kgCH4: the share 1 - exp(-k n). `years` has the unit a. */
export function methaneWithin(deposit: Deposit, years: Quantity): Quantity {
  return methaneOfDeposit(deposit).times(left(deposit.rate, years).complement());
}

/** What of it is let out in year n alone, counted from 1, kgCH4: the share exp(-k(n - 1)) - exp(-k n). */
export function methaneInYear(deposit: Deposit, year: Quantity): Quantity {
  const before = left(deposit.rate, year.minus(constant('1', 'a')));
  return methaneOfDeposit(deposit).times(before.minus(left(deposit.rate, year)));
}

/** The part not yet decayed after so many years. */
function left(rate: Quantity, years: Quantity): Quantity {
  return euler.toThePower(constant('0').minus(rate.times(years)));
}
