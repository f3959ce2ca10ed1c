/** What pulp and recovered paper cost in a mill's own months: two price inputs, and a figure of each for every month. */
export interface PriceMonths {
  /** Ids of the two inputs, each another. */
  readonly pulp: string;
  readonly recovered: string;
  readonly points: readonly PricePoint[];
}

/** Prices in the entry units of their inputs. */
export interface PricePoint {
  /** As the person writes it: "2024-03", "March". */
  readonly month: string;
  readonly pulp: string;
  readonly recovered: string;
}

export const mostMonths = 600;
export const longestMonth = 40;
