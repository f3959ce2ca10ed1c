import type { RouteFootprint } from '../../../src/index.ts';
import { upperFirst } from '../../numbers/letter-case.ts';

export interface Facing {
  readonly base: RouteFootprint;
  readonly with: RouteFootprint;
}

/** "Virgin" and "Recovered" where that tells the routes apart, else their own names. */
export function routeNames(facing: Facing): { readonly base: string; readonly with: string } {
  return facing.base.kind === facing.with.kind
    ? { base: facing.base.label, with: facing.with.label }
    : { base: upperFirst(facing.base.kind), with: upperFirst(facing.with.kind) };
}
