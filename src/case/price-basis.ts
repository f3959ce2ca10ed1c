/** The tonne that a price is asked for. */
export type PriceBasis = 'as received' | 'air-dry' | 'bone-dry';
/** How a delivery wetter than agreed is paid for. */
export type Settlement = 'as weighed' | 'dry basis' | 'point for point';
