import type { Quantity } from '../../kernel/expression/quantity.ts';
import type { Component } from '../components.ts';

/** The share of each component that leaves a stage, 0 where nothing does. */
export type Removal = Readonly<Record<Component, Quantity>>;
