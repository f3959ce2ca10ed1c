import type { Alternative, Lot } from '../../case/lots.ts';
import type { PaperGrade } from '../../paper/materials/en-643.ts';
import type { LotNote } from './lot-note.ts';
import type { Reading } from './reading.ts';
import type { Excess } from './tolerance.ts';

/** A lot priced for its line. Money in that of the case; NaN where something is missing or cannot be worked out. */
export interface PricedLot {
  readonly lot: Lot;
  readonly grade: PaperGrade | null;
  readonly priceUnit: string;
  /** Asked for a tonne of the price's own basis, and what that is worth where it is paid later. */
  readonly asked: number;
  readonly paidNow: number;
  readonly moisture: Reading;
  readonly unusable: Reading;
  readonly settled: SettledWeight;
  readonly overTolerance: OverTolerance | null;
  /** Bone-dry stock from a tonne bought, as received. */
  readonly stockPerTonne: number;
  /** Freight and handling of a tonne as received. */
  readonly freight: number;
  /** Cost of a tonne of product with this lot in the line, all its energy, chemicals and residues within. */
  readonly cost: number;
  /** kgCO2e of it. */
  readonly carbon: number;
  /** Tonnes of product for which the lot is enough; NaN where its weight is not known. */
  readonly product: number;
  /** 1 for the cheapest; null for a lot that cannot be ranked. */
  readonly rank: number | null;
  readonly walkAway: WalkAway;
  readonly worth: readonly Concession[];
  readonly notes: readonly LotNote[];
  readonly values: {
    readonly feed: number;
    readonly received: number;
    readonly ash: number;
    readonly macroStickies: number;
  };
}

/** What is paid for of what was weighed. */
export interface SettledWeight {
  /** Payable tonnes of the price's own basis for a tonne as received. */
  readonly perTonne: number;
  /** For the whole lot; NaN where its weight is not known. */
  readonly payable: number;
  /** Tonnes and money that are not paid for excess moisture; 0 where the basis settles it by itself. */
  readonly moistureTonnes: number;
  readonly moistureClaim: number;
  /** Money that is not paid for unusable material. */
  readonly unusableClaim: number;
}

/** Material above what the grade tolerates, what it costs, and what can be done about it. */
export interface OverTolerance extends Excess {
  /** What it adds to a tonne of product, and to the product of the whole lot. */
  readonly cost: number;
  readonly lotCost: number;
  /** Cost of a tonne of product if what is above the tolerance is not paid for; NaN where the price is not per tonne as received. */
  readonly claimed: number;
  /** Cost of a tonne of product at the price of the lower grade; NaN where nobody named one. */
  readonly downgraded: number;
}

/** The dearest price at which the lot's share of the furnish costs no more than what could stand in its place. */
export interface WalkAway {
  readonly virgin: number;
  readonly other: number;
  /** The lot that `other` is held against. */
  readonly otherLot: string | null;
  readonly target: number;
  /** The one that counts: what the case says, else the lower of virgin and the best other lot. */
  readonly against: Alternative | null;
  readonly price: number;
  /** Ends of it over the 95 % intervals of moisture and unusable material together; null where neither was read twice. */
  readonly low: number | null;
  readonly high: number | null;
}

export interface Concession {
  readonly what: 'moisture' | 'unusable' | 'distance' | 'price';
  /** Money on the price of a tonne, per tonne of product, and for the lot. */
  readonly price: number;
  readonly product: number;
  readonly lot: number;
}
