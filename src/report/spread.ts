import type { PriceTerms } from '../case/case.ts';
import type { RouteKind } from '../case/route-kind.ts';
import type { Bounds } from '../kernel/expression/operation.ts';
import type { Status } from '../kernel/graph/input-declaration.ts';
import type { CapitalStand } from '../study/before-new-plant.ts';
import type { SameProductStand } from '../study/trust/same-product.ts';

/** Money of one line, per tonne of product and per year. `shown` figures are rounded so that parts add up to the rounded whole. */
export interface Amount {
  /** Ids of the quantities, to open their working. */
  readonly perTonneId: string;
  readonly perYearId: string;
  /** NaN where it cannot be worked out. */
  readonly perTonne: number;
  readonly perYear: number;
  /** Two decimals, as plain digits ("-139.92"); "" where it cannot be worked out. */
  readonly shownPerTonne: string;
  /** Millions with two decimals. */
  readonly shownPerYear: string;
}

/** What sets a line: an input to type over, or a result that comes from elsewhere. */
export type Driver =
  | { readonly kind: 'input'; readonly id: string }
  | { readonly kind: 'result'; readonly id: string; readonly value: number; readonly unit: string };

export interface SpreadSide {
  readonly label: string;
  readonly amount: Amount;
  readonly driver: Driver | null;
}

/** One line of the ledger, both pages of it; a side that has no such line is null. */
export interface SpreadRow {
  readonly key: string;
  readonly base: SpreadSide | null;
  readonly with: SpreadSide | null;
  readonly difference: Amount;
}

export type GroupId =
  'fibre' | 'energy' | 'chemicals' | 'water and residue' | 'carbon' | 'people and plant' | 'machine effect';

export interface SpreadGroup {
  readonly id: GroupId;
  readonly label: string;
  readonly base: Amount;
  readonly with: Amount;
  readonly difference: Amount;
  readonly rows: readonly SpreadRow[];
}

export interface RouteHead {
  readonly id: string;
  readonly label: string;
  /** A route with any recovered line is a recovered one. */
  readonly kind: RouteKind;
  /** The train in a few words: "Slush, refine, clean". */
  readonly steps: string;
  readonly total: Amount;
}

export interface InputView {
  readonly id: string;
  readonly label: string;
  readonly where: string;
  /** Plain digits in `unit`; "" where nobody has given a figure. */
  readonly value: string;
  readonly unit: string;
  readonly low: string | null;
  readonly high: string | null;
  readonly allowed: Bounds;
  readonly status: Status;
  readonly source: string;
  readonly note: string;
  readonly touched: boolean;
  /** The day the figure is of, "" where nobody has said; only prices and what ages like them hold one, and only where a person gave them. */
  readonly date?: string;
  /** The default, where the figure in force is a person's own. */
  readonly usual: string | null;
  /** Carbon factors only: what it takes in. A figure given for one must name its source. */
  readonly boundary?: string;
  /** Carbon factors only, where they are known: the year of the set, the rule of allocation, the set of warming potentials. */
  readonly year?: string;
  readonly allocation?: string;
  readonly gwp?: string;
}

export interface Warning {
  readonly id: string;
  readonly sentence: string;
  /** The quantity or input it is about, to open it. */
  readonly about: string | null;
}

/** A law that the figures must keep: that mass closes, that costs add up. */
export interface Check {
  readonly id: string;
  readonly label: string;
  readonly kept: boolean;
}

/** A figure of the product itself, in both routes; values in `unit`, NaN where they cannot be worked out. */
export interface SideBySide {
  readonly label: string;
  readonly unit: string;
  readonly decimals: number;
  readonly base: { readonly id: string; readonly value: number };
  readonly with: { readonly id: string; readonly value: number };
}

/** What a price of fibre is per, what it stands for, and in which money. */
export interface FibrePrice {
  readonly material: string;
  readonly terms: PriceTerms;
}

/** The home page: two routes of the same tonne, face to face. Differences are `with` less `base`. */
export interface Spread {
  readonly title: string;
  readonly currency: string;
  readonly priceYear: string;
  readonly product: { readonly name: string; readonly moistureInput: string; readonly tonnesInput: string };
  readonly base: RouteHead;
  readonly with: RouteHead;
  readonly difference: Amount;
  /** The same with its electricity at the marginal price in place of the average; null where the case has no marginal price. */
  readonly atMarginalPower: Amount | null;
  /** How the capital of the recovered line stands in the difference: counted, left to the investment plan, or not entered by anybody. */
  readonly capital: CapitalStand;
  /** Whether the two routes make the same product, as far as anybody has said. */
  readonly sameProduct: SameProductStand;
  readonly sideBySide: readonly SideBySide[];
  /** Terms of the prices of fibre, by the id of the input. */
  readonly fibrePrices: Readonly<Record<string, FibrePrice>>;
  readonly groups: readonly SpreadGroup[];
  readonly checks: readonly Check[];
  readonly warnings: readonly Warning[];
  /** Every input of the case, by id. */
  readonly inputs: Readonly<Record<string, InputView>>;
}
