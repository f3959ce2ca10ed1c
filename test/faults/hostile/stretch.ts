/** What a reader tells about a stretch of files. Times in milliseconds of the processor. */
export interface Stretch {
  readonly refused: number;
  readonly opened: number;
  readonly slowest: { readonly milliseconds: number; readonly kind: string; readonly file: number };
  readonly byKind: Readonly<Record<string, number>>;
  readonly failures: readonly string[];
}
