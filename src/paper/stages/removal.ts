import type { Quantity } from '../../kernel/expression/quantity.ts';
import type { Component } from '../components.ts';

/** The share of each component that leaves a stage, 0 where nothing does. */
export type Removal = Readonly<Record<Component, Quantity>>;

/** What there is to tell of a cascade: its single stages, and the groups of components that part alike in them. */
export interface CascadeShape {
  /** For each single stage, whether its accepts go forward to product. */
  readonly forward: readonly boolean[];
  /** Names stand in the ids of feeds and reject ratios: a component, "fibre" with what follows it, "water" with what follows it. */
  readonly partings: readonly { readonly name: string; readonly label: string }[];
}

export interface Separation {
  readonly removal: Removal;
  readonly cascade: CascadeShape | null;
}
