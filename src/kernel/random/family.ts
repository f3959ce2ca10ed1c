/** The quantity at a normal score `z`: the quantile at the share that lies below z. Never falls as z rises, apart from rounding. */
export type Sampler = (score: number) => number;

/** What every family of distributions answers, in the unit of the quantity. */
export interface Family {
  /** Built when it is asked for, because a table may have to be worked out. */
  readonly sampler: () => Sampler;
  readonly mean: () => number;
  /** Standard deviation. */
  readonly deviation: () => number;
}

/** One value without doubt. */
export function certain(value: number): Family {
  return { sampler: () => () => value, mean: () => value, deviation: () => 0 };
}
