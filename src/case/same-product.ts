/** The questions that decide whether two routes make the same product, in the order in which they are asked. */
export const sameProductQuestions = ['food contact', 'strength', 'brightness', 'surface', 'customer'] as const;
export type SameProductQuestion = (typeof sameProductQuestions)[number];

export const sameProductReplies = ['yes', 'no', 'not yet'] as const;
export type SameProductReply = (typeof sameProductReplies)[number];

/** What somebody answered; a question without an answer is open. */
export interface SameProductAnswer {
  readonly question: SameProductQuestion;
  readonly reply: SameProductReply;
  /** What was seen, in the words of whoever answers. */
  readonly note?: string;
  readonly by?: string;
  /** The day of the answer, "2026-11-03". */
  readonly on?: string;
}

/** The answers about one pair of routes; which of them stands first makes no difference. */
export interface SameProduct {
  readonly base: string;
  readonly with: string;
  readonly answers: readonly SameProductAnswer[];
}

/** Whether the answers are about these two routes. */
export function isAbout(pair: Pick<SameProduct, 'base' | 'with'>, one: string, other: string): boolean {
  return (pair.base === one && pair.with === other) || (pair.base === other && pair.with === one);
}
