import type { Status } from '../kernel/graph/input-declaration.ts';

/** A figure that a person gave, in the unit they gave it in. */
export interface GivenInput {
  readonly value: string;
  readonly unit: string;
  readonly status?: Status;
  readonly source?: string;
  /** The day the figure is of: of a quotation, an index, a contract; "2026-11-03". */
  readonly date?: string;
  /** Carbon factors only: what the figure takes in. Left out, it stands for what the input asks for. */
  readonly boundary?: string;
  /** Carbon factors only: the year of the set it comes from, "2025". */
  readonly year?: string;
  /** Carbon factors only: the set of warming potentials behind its CO2e; "none" where it is CO2 alone. */
  readonly gwp?: 'AR4' | 'AR5' | 'AR6' | 'none';
  /** Carbon factors only: how recovered material shares the burden of its first life. */
  readonly allocation?: 'none' | 'cut-off' | 'closed loop' | 'substitution';
}
