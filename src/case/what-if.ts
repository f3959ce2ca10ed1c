import type { GivenInput } from './given-input.ts';
import type { PriceMonths } from './price-months.ts';

/** What a person asks of a case beside its figures: how far inputs may go, what must hold, what else could be, how sure they are. */
export interface WhatIf {
  /** Judged ranges of inputs, each in the entry unit of its input; they take the place of the program's usual range. */
  readonly ranges?: Readonly<Record<string, GivenRange>>;
  readonly limits?: readonly Limit[];
  readonly scenarios?: readonly Scenario[];
  readonly uncertainty?: Uncertainty;
  /** The mill's own months on the plane of two prices. */
  readonly months?: PriceMonths;
}

export interface GivenRange {
  readonly low: string;
  readonly high: string;
  readonly source?: string;
}

/** A result that must not exceed, or fall short of, a value: a permit, a ban, the capacity of an outlet, what a customer accepts. */
export interface Limit {
  readonly id: string;
  readonly label: string;
  /** Id of the result without that of its route ("productAsh"): it is watched in every route that has it. */
  readonly result: string;
  /** Watches one route only. */
  readonly route?: string;
  readonly sense: 'at most' | 'at least';
  readonly value: string;
  /** The unit of the result, or that of a year (t/a) or a running day (t/d) of it: the unit says the period. */
  readonly unit: string;
  readonly kind: 'hard' | 'soft';
  readonly source?: string;
  /** First and last day on which it holds, "2027-12-31". */
  readonly from?: string;
  readonly until?: string;
}

/** A named set of figures that could be instead of those of the case. */
export interface Scenario {
  readonly id: string;
  readonly label: string;
  readonly note?: string;
  readonly inputs: Readonly<Record<string, GivenInput>>;
}

/** What is not known for certain, and how trials of it are drawn. */
export interface Uncertainty {
  readonly trials: number;
  /** Start of the random streams: the same seed gives the same trials. */
  readonly seed: number;
  /** Years of the plan over which a result is averaged. */
  readonly years: number;
  readonly inputs: Readonly<Record<string, GivenDistribution>>;
  readonly correlations?: readonly Correlation[];
}

/** Figures are in the entry unit of the input; a mode or mean that is left out is the figure in force. */
export interface GivenDistribution {
  readonly law: DistributionLaw;
  readonly low?: string;
  readonly mode?: string;
  readonly high?: string;
  readonly mean?: string;
  readonly deviation?: string;
  readonly values?: readonly { readonly value: string; readonly weight: string }[];
  /** Drawn once for the whole plan, or anew each year; prices yearly and all else once where it is left out. */
  readonly drawn?: 'once' | 'yearly';
  /** How much of a year's departure is carried into the next, 0 to 1; 0.7 where it is left out. */
  readonly persistence?: string;
}

export type DistributionLaw = (typeof distributionLaws)[number];
export const distributionLaws = ['fixed', 'uniform', 'triangular', 'PERT', 'normal', 'lognormal', 'discrete'] as const;

/** Correlation of the normal scores of two inputs (Gaussian copula), -1 to 1. */
export interface Correlation {
  readonly one: string;
  readonly other: string;
  readonly value: string;
}
