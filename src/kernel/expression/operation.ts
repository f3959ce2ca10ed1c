import type { Quantity } from './quantity.ts';

/**
 * Everything a calculation may do: a closed union. Each reading (decimal, float, words, workbook formula) is a mapped type over it, so
 * that a reading which forgets one operation does not compile.
 */
export type Operation =
  | { readonly op: 'input'; readonly args: readonly []; readonly key: string }
  | { readonly op: 'constant'; readonly args: readonly []; readonly digits: string }
  | { readonly op: 'later'; readonly args: readonly []; readonly id: string }
  | { readonly op: 'same'; readonly args: readonly [Quantity] }
  | { readonly op: 'sum'; readonly args: readonly Quantity[] }
  | { readonly op: 'subtract'; readonly args: readonly [Quantity, Quantity] }
  | { readonly op: 'multiply'; readonly args: readonly [Quantity, Quantity] }
  | { readonly op: 'divide'; readonly args: readonly [Quantity, Quantity] }
  | { readonly op: 'power'; readonly args: readonly [Quantity, Quantity] }
  | { readonly op: 'lesser'; readonly args: readonly [Quantity, Quantity] }
  | { readonly op: 'greater'; readonly args: readonly [Quantity, Quantity] }
  /** args: value, limit, result when value > limit, result otherwise. Only the result taken can fail. */
  | { readonly op: 'whenAbove'; readonly args: readonly [Quantity, Quantity, Quantity, Quantity] }
  /** Passes its argument through, or fails when it lies outside the bounds. */
  | { readonly op: 'within'; readonly args: readonly [Quantity]; readonly bounds: Bounds };

export type OperationName = Operation['op'];
export type OperationOf<Name extends OperationName> = Extract<Operation, { op: Name }>;

/** Limits a quantity must keep, as digits in the quantity's own unit. A bound may be left out, or be one that must not be reached. */
export interface Bounds {
  readonly least?: string;
  readonly most?: string;
  readonly above?: string;
  readonly below?: string;
}
