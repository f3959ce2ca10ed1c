/** What a contract says a tonne costs: max(floor, min(cap, slope x index + constant)) - rebate, all in the money of the price. */
export function contractPrice(terms: {
  readonly index: number;
  readonly slope: number;
  readonly constant: number;
  readonly floor: number;
  readonly cap: number;
  readonly rebate: number;
}): number {
  const { index, slope, constant, floor, cap, rebate } = terms;
  return Math.max(floor, Math.min(cap, slope * index + constant)) - rebate;
}

/**
 * Freight of a tonne as received by the load: money per load x (1 - backhaul) / min(payload, volume x density of the bales), in tonnes,
 * m3 and t/m3. `backhaul` is the share of the money that a load on the way back bears, 0 to 1.
 */
export function loadFreight(load: {
  readonly money: number;
  readonly backhaul: number;
  readonly payload: number;
  readonly volume: number;
  readonly density: number;
}): number {
  return (load.money * (1 - load.backhaul)) / Math.min(load.payload, load.volume * load.density);
}

/** What is left of money that is paid later: 1 - rate x days/365, the rate a year as a fraction. */
export function creditLeft(rate: number, days: number): number {
  return 1 - (rate * days) / 365;
}
