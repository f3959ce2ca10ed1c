/** A table that is written a stretch of rows at a time. What it gives back is to be written to the file in that order. */
export interface TrialTable {
  begin(heads: readonly string[]): string | Uint8Array;
  rows(rows: readonly (readonly number[])[]): string | Uint8Array;
  end(): string | Uint8Array;
}
