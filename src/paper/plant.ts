import type { Route } from '../case/case.ts';
import type { Quantity } from '../kernel/expression/quantity.ts';
import type { Flow } from './components.ts';
import type { LineResult } from './line.ts';
import type { Machine } from './machine.ts';
import type { Purchase } from './materials/purchase.ts';

/** What is common to every route: the product, the year's tonnes and hours, and what bought materials cost. */
export interface Mill {
  /** Dry mass of a saleable tonne, bdt/t. */
  readonly dryProduct: Quantity;
  readonly productMoisture: Quantity;
  /** t/a and h/a. */
  readonly tonnes: Quantity;
  readonly hours: Quantity;
  readonly compositions: ReadonlyMap<string, Flow>;
  readonly purchases: ReadonlyMap<string, Purchase>;
}

/** A route with its lines and its machine worked out; energy, water, residues and money build on it. */
export interface Plant {
  readonly route: Route;
  readonly mill: Mill;
  readonly machine: Machine;
  readonly lines: readonly LineResult[];
}
