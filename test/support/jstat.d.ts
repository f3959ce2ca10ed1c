/** The part of jstat 1.9.6 that tests compare with; the package brings no types. */
declare module 'jstat' {
  /** Quantiles: `inv(share, ...shape)`; shares: `cdf(value, ...shape)`. */
  interface Continuous<Shape extends readonly number[]> {
    inv(share: number, ...shape: Shape): number;
    cdf(value: number, ...shape: Shape): number;
  }

  export const jStat: {
    readonly uniform: Continuous<[low: number, high: number]>;
    readonly triangular: Continuous<[low: number, high: number, mode: number]>;
    readonly normal: Continuous<[mean: number, deviation: number]>;
    readonly lognormal: Continuous<[logMean: number, logDeviation: number]>;
    readonly beta: Continuous<[first: number, second: number]>;
    readonly studentt: Continuous<[degrees: number]>;
    readonly chisquare: Continuous<[degrees: number]>;
    /** Ends of the interval of a mean by Student's t, for the share left outside it. */
    tci(mean: number, outside: number, values: readonly number[]): [low: number, high: number];
    mean(values: readonly number[]): number;
    percentile(values: readonly number[], share: number): number;
    spearmancoeff(one: readonly number[], other: readonly number[]): number;
  };
}
