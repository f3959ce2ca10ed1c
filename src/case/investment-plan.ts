/** A plan to change from one route to another: what there is in it. Its figures are inputs of the case like all others. */
export interface InvestmentPlan {
  /** The route that is made now, and the one that the new line makes; the plan stays theirs whichever routes are compared. */
  readonly from: string;
  readonly to: string;
  /** Calendar year of year 0, in which the first money is spent, "2027". */
  readonly start: string;
  /** The last year of the plan, counted from year 0. */
  readonly years: number;
  /** The year in which the new line begins to run. */
  readonly operatesFrom: number;
  /** Whether the plan is told in money of the price year, or in the money of each year. */
  readonly money: 'real' | 'nominal';
  /** How far the estimate of the capital has been worked out, 5 (idea) to 1 (checked tenders): it says how far the capital may be out. */
  readonly estimateClass?: '1' | '2' | '3' | '4' | '5';
  readonly items: readonly CapitalItem[];
  readonly supports?: readonly Support[];
  /** Destinations that take residues for a part of the plan only; all others are open in every year. */
  readonly outlets?: readonly OutletYears[];
  readonly depreciation: 'straight line' | 'declining balance' | 'table';
  readonly losses: 'carried forward' | 'at once';
}

/** Something that is built or paid for once; its owner's cost, spares and commissioning are items too. */
export interface CapitalItem {
  readonly id: string;
  readonly label: string;
}

/** Money from others, the same every year from the first to the last: a grant towards the capital, or a credit to the operation. */
export interface Support {
  readonly id: string;
  readonly label: string;
  readonly kind: 'grant' | 'credit';
  readonly first: number;
  readonly last: number;
}

/** The first and last year in which a destination takes residues: a landfill that closes, a contract that ends. Counted from year 0. */
export interface OutletYears {
  readonly destination: string;
  readonly first: number;
  readonly last: number;
}
