import type { CarbonPriceScheme, FootprintBasis, Route, Stage } from '../case.ts';
import type { InvestmentPlan } from '../investment-plan.ts';
import type { TrustEdit } from './trust-edits.ts';
import type { LotsEdit } from './lots-edits.ts';
import type { WhatIfEdit } from './what-if-edits.ts';

/** A change of the structure of a case: what is there, as against what it is worth. Names of things are their ids. */
export type Edit =
  | WhatIfEdit
  | TrustEdit
  | LotsEdit
  | {
      readonly kind: 'add stage';
      readonly route: string;
      readonly line: string;
      readonly like: string;
      readonly at: number;
    }
  | { readonly kind: 'remove stage'; readonly route: string; readonly line: string; readonly stage: string }
  | { readonly kind: 'duplicate stage'; readonly route: string; readonly line: string; readonly stage: string }
  | {
      readonly kind: 'move stage';
      readonly route: string;
      readonly line: string;
      readonly stage: string;
      readonly to: number;
    }
  /** Changes how a stage works; an option given as null goes back to what the stage usually does. */
  | {
      readonly kind: 'set up stage';
      readonly route: string;
      readonly line: string;
      readonly stage: string;
      readonly options: StageOptions;
    }
  | { readonly kind: 'add line'; readonly route: string; readonly material: string }
  | { readonly kind: 'remove line'; readonly route: string; readonly line: string }
  | { readonly kind: 'duplicate line'; readonly route: string; readonly line: string }
  | { readonly kind: 'move line'; readonly route: string; readonly line: string; readonly to: number }
  | { readonly kind: 'balance by line'; readonly route: string; readonly line: string }
  | { readonly kind: 'add grade'; readonly route: string; readonly line: string; readonly material: string }
  | { readonly kind: 'remove grade'; readonly route: string; readonly line: string; readonly material: string }
  | { readonly kind: 'duplicate route'; readonly route: string }
  | { readonly kind: 'remove route'; readonly route: string }
  | { readonly kind: 'rename route'; readonly route: string; readonly label: string }
  | { readonly kind: 'move route'; readonly route: string; readonly to: number }
  /** Whether the tonnes for the same service are as somebody gives them, or what the strength of the furnish asks for. */
  | { readonly kind: 'set service'; readonly route: string; readonly service: NonNullable<Route['service']> }
  | { readonly kind: 'compare routes'; readonly base: string; readonly with: string }
  /** Plans an investment, or gives the plan up; figures of a plan that is given up go with it. */
  | { readonly kind: 'set investment'; readonly plan: InvestmentPlan | null }
  /** Gives a residue stream another waste code than usual; null goes back to the usual one. */
  | { readonly kind: 'set waste code'; readonly stream: string; readonly code: string | null }
  /** Changes what the price of carbon is paid on, and how free allocation is seen; an option given as null is left out again. */
  | { readonly kind: 'set carbon price'; readonly scheme: CarbonPriceOptions }
  /** Changes what the footprint rests on; an option given as null goes back to the usual one. */
  | { readonly kind: 'set basis'; readonly basis: BasisOptions };

export type StageOptions = { readonly [Key in Exclude<keyof Stage, 'id'>]?: Stage[Key] | null };

export type BasisOptions = { readonly [Key in keyof FootprintBasis]?: FootprintBasis[Key] | null };

export type CarbonPriceOptions = { readonly [Key in keyof CarbonPriceScheme]?: CarbonPriceScheme[Key] | null };
