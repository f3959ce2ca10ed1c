import type { FurtherFigure } from '../paper/sheet.ts';
import type { InputView } from './spread.ts';

/** How one figure was worked out: its equation in words and in numbers, and what it is made of, step by step down to the inputs. */
export interface Explanation {
  readonly id: string;
  readonly label: string;
  readonly where: string;
  readonly unit: string;
  /** NaN where it cannot be worked out; `failure` then says why and where it began. 0 where nothing but rounding is left of a balance. */
  readonly value: number;
  /** Every digit of the decimal reading. */
  readonly exact: string;
  readonly failure: string | null;
  readonly note: string;
  /** "Stock needed ÷ line yield"; "" for an input. */
  readonly words: string;
  /** "0.897319 ÷ 0.950655", digits enough to come true on a pocket calculator. */
  readonly numbers: string;
  readonly input: InputView | null;
  /** Figures that nobody gave and that could stand beside it or its ingredients: of the same material, residue or kind of price. */
  readonly further: readonly FurtherFigure[];
  /** Named quantities and inputs it is directly made of, each once. */
  readonly ingredients: readonly Ingredient[];
  /** What is directly made of it. */
  readonly goesInto: readonly { readonly id: string; readonly label: string; readonly where: string }[];
}

export interface Ingredient {
  readonly id: string;
  readonly label: string;
  readonly where: string;
  readonly value: number;
  readonly unit: string;
  readonly words: string;
  readonly numbers: string;
  readonly input: InputView | null;
}
