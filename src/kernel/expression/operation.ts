/**
 * Everything a calculation may do: a closed union. Each reading (decimal, float, words, workbook formula) is a mapped type over it, so
 * that a reading which forgets one operation does not compile. `Arg` is what operations work on.
 */
export type Operation<Arg = unknown> =
  | { readonly op: 'input'; readonly args: readonly []; readonly key: string }
  | { readonly op: 'constant'; readonly args: readonly []; readonly digits: string }
  /** Stands for the quantity of that id, which is defined further on. */
  | { readonly op: 'later'; readonly args: readonly []; readonly id: string }
  | { readonly op: 'same'; readonly args: readonly [Arg] }
  | { readonly op: 'sum'; readonly args: readonly Arg[] }
  | { readonly op: 'subtract'; readonly args: readonly [Arg, Arg] }
  | { readonly op: 'multiply'; readonly args: readonly [Arg, Arg] }
  | { readonly op: 'divide'; readonly args: readonly [Arg, Arg] }
  | { readonly op: 'power'; readonly args: readonly [Arg, Arg] }
  | { readonly op: 'lesser'; readonly args: readonly [Arg, Arg] }
  | { readonly op: 'greater'; readonly args: readonly [Arg, Arg] }
  /** args: value, limit, result when value > limit, result otherwise. Only the result taken can fail. */
  | { readonly op: 'whenAbove'; readonly args: readonly [Arg, Arg, Arg, Arg] }
  /** Passes its argument through, or fails when it lies outside the bounds. */
  | { readonly op: 'within'; readonly args: readonly [Arg]; readonly bounds: Bounds };

export type OperationName = Operation['op'];
export type OperationOf<Name extends OperationName> = Extract<Operation, { op: Name }>;

/** Limits a quantity must keep, as digits in the quantity's own unit. A bound may be left out, or be one that must not be reached. */
export interface Bounds {
  readonly least?: string;
  readonly most?: string;
  readonly above?: string;
  readonly below?: string;
}
