/** What was measured: times in milliseconds of one call, and of what it is held against. */
export interface Measured {
  /** Name in the JSON output. */
  readonly key: string;
  readonly what: string;
  readonly time: number;
  readonly against: number;
  /** How many times the other it takes; where being faster is asked for, how many times faster it is. */
  readonly ratio: number;
}

/** How many times as long as the reference something takes. */
export function timesAsLong(key: string, what: string, time: number, against: number): Measured {
  return { key, what, time, against, ratio: time / against };
}

/** How many times as fast as the other way something is. */
export function timesAsFast(key: string, what: string, time: number, against: number): Measured {
  return { key, what, time, against, ratio: against / time };
}

/** What a ratio is asked to be. */
export interface Bar {
  readonly sense: 'at most' | 'at least';
  readonly value: number;
}

export const bars: Readonly<Record<string, Bar>> = {
  one: { sense: 'at most', value: 3.5 },
  slopes: { sense: 'at most', value: 6 },
  slopesAgainstReevaluation: { sense: 'at least', value: 60 },
  table51: { sense: 'at most', value: 0.6 },
  table51Hardest: { sense: 'at most', value: 0.6 },
  tornado: { sense: 'at most', value: 1.5 },
  trials: { sense: 'at most', value: 1 },
  spreadsheetTable: { sense: 'at least', value: 200 },
};

/** The most memory a million trials may take. */
export const mostMiB = 400;

export function meets({ sense, value }: Bar, ratio: number): boolean {
  return sense === 'at most' ? ratio <= value : ratio >= value;
}
