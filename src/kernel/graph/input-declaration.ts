import type { Bounds } from '../expression/operation.ts';

/** How far a number can be believed, best first. */
export type Status = 'measured' | 'definition' | 'read' | 'derived' | 'memory' | 'practice' | 'invented' | 'none';

export interface Provenance {
  readonly status: Status;
  /** Title, publisher, year, place in the text; or "common practice, no source". */
  readonly source: string;
  readonly note?: string;
  /** Further facts that belong to the figure, by name: its year, its boundary. */
  readonly details?: Readonly<Record<string, string>>;
}

/** An input of a calculation: what it is, the figure in force, and where that figure comes from. All figures are digits as text. */
export interface InputDeclaration {
  readonly id: string;
  readonly label: string;
  readonly where?: string;
  /** The unit people write it in; the graph reckons in `unit`, and `factor` turns the one into the other. */
  readonly entryUnit: string;
  readonly factor: string;
  /** The usual figure and its usual range, in the entry unit. No default means that somebody must give a figure. */
  readonly usual: {
    readonly value: string | null;
    readonly low: string | null;
    readonly high: string | null;
    readonly provenance: Provenance;
  };
  /** The range a person judged it to have, in the entry unit; null where nobody did. */
  readonly judged: { readonly low: string; readonly high: string; readonly source: string } | null;
  /** What can be true at all, in the entry unit. */
  readonly allowed: Bounds;
  /** The figure a person gave, if any. */
  readonly given: { readonly value: string; readonly provenance: Provenance } | null;
}

/** The figure in force, in the entry unit; null where there is none. */
export function inForce(input: InputDeclaration): string | null {
  return input.given?.value ?? input.usual.value;
}
