import type { PriceBasis, Settlement } from './price-basis.ts';

/** What suppliers offer for one line of a route, and what it is held against. None of it changes what the case comes to. */
export interface Lots {
  /** The line that a lot would feed; the largest recovered line of the compared route where none is named. */
  readonly line?: { readonly route: string; readonly line: string };
  /** What the price to walk away at is held against; the cheaper of the virgin line and the best other lot where nothing is said. */
  readonly against?: Alternative;
  /** Cost of a tonne of product that must not be exceeded, in the money of the case. */
  readonly target?: string;
  /** Yearly rate at which days of payment are worth money, in per cent. */
  readonly creditRate?: string;
  readonly offers: readonly Lot[];
  readonly blend?: Blend;
}

export type Alternative = 'virgin line' | 'best other lot' | 'target cost';

export interface Lot {
  readonly id: string;
  readonly label: string;
  /** Code of a grade of EN 643, "1.04.00"; the paper that the line is fed today where none is named. */
  readonly grade?: string;
  readonly basis: PriceBasis;
  readonly settlement: Settlement;
  readonly delivery: Delivery;
  /** What is done about material above the tolerance of the grade; nothing where it is left out. */
  readonly remedy?: Remedy;
  /** The grade at whose price the lot is taken, where it is downgraded. */
  readonly downgradeTo?: string;
  /** The last day on which the offer holds, "2026-09-30". */
  readonly validUntil?: string;
  /** Readings of the moisture as received, in per cent; one of them is the value itself. */
  readonly moisture?: readonly string[];
  /** Readings of all unusable material on dry mass, in per cent. */
  readonly unusable?: readonly string[];
  readonly figures: Readonly<Partial<Record<LotFigure, string>>>;
}

export type Delivery = (typeof deliveries)[number];
export const deliveries = ['ex works', 'ex works by distance', 'ex works by load', 'delivered'] as const;
export type Remedy = 'claim' | 'downgrade' | 'refuse';

export type LotFigure = (typeof lotFigures)[number];
export const lotFigures = [
  'tonnes',
  'price',
  'index',
  'slope',
  'constant',
  'floor',
  'cap',
  'rebate',
  'paymentDays',
  'freight',
  'distance',
  'freightRate',
  'loadMoney',
  'backhaul',
  'payload',
  'volume',
  'baleDensity',
  'moistureLimit',
  'moistureTolerance',
  'unusableLimit',
  'downgradePrice',
  'lights',
  'heavies',
  'wire',
  'wetStrength',
  'ash',
] as const;

/** Several lots as the recipe of the line. */
export interface Blend {
  /** Share of each lot in the dry feed, in per cent, by the lot's id. */
  readonly shares?: Readonly<Record<string, string>>;
  /** Tonnes of product for which the lots on offer must last. */
  readonly product?: string;
  /** Greatest ash of the product, per cent. */
  readonly ash?: string;
  /** Greatest macro-stickies of the product, kg/t. */
  readonly macroStickies?: string;
  /** Greatest moisture of what is bought, per cent. */
  readonly moisture?: string;
  /** Least and greatest share of each grade in the dry feed, per cent, by its code. */
  readonly grades?: Readonly<Record<string, { readonly least?: string; readonly most?: string }>>;
}
