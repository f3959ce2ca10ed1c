import { type Quantity, constant } from '../../kernel/expression/quantity.ts';

/** What a lorry or a container costs and holds. */
interface LoadTerms {
  /** Money per load. */
  readonly price: Quantity;
  /** Share of the way back that somebody else pays for. */
  readonly backhaul: Quantity;
  /** What it may weigh, t-ar/load. */
  readonly payload: Quantity;
  /** What goes in, m3/load. */
  readonly volume: Quantity;
  /** kg/m3, as received. */
  readonly baleDensity: Quantity;
}

/** Tonnes as received that a load holds: the weight it may carry, or the room it has, whichever is less. t-ar/load. */
export function loadMass({
  payload,
  volume,
  baleDensity,
}: Pick<LoadTerms, 'payload' | 'volume' | 'baleDensity'>): Quantity {
  return payload.lesserOf(volume.times(baleDensity).times(constant('0.001', 't-ar/kg')));
}

/** Money per tonne as received: money per load x (1 - backhaul share) / min(payload, volume x bale density). */
export function freightPerLoad(load: LoadTerms): Quantity {
  return load.price.times(load.backhaul.complement()).dividedBy(loadMass(load));
}
