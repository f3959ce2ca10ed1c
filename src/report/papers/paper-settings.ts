/** What a printed paper needs that the case does not hold. */
export interface PaperSettings {
  /** Whose separators and dates are used. */
  readonly locale: string;
  /** The day it is made, as 2026-11-25. */
  readonly date: string;
  /** Name of the file of the case; "" while it has none. */
  readonly fileName: string;
  /** A few characters by which two states of a case can be told apart; "" for none. */
  readonly mark: string;
  /** Version of the program. */
  readonly version: string;
  readonly format: PaperFormat;
}

export type PaperFormat = 'A4' | 'Letter';
