import type { CauseAmount, FactorUsed, RouteFootprint } from '../../../src/index.ts';
import { addingUp } from '../../numbers/adding-up.ts';
import type { Facing } from './route-names.ts';
import type { Scale } from './scales.ts';

export type ScopeName = CauseAmount['scope'];

/** A figure as shown; null where a route has no such cause. */
export interface Carbon {
  readonly amount: number;
  readonly id: string;
}

export interface CauseRow {
  readonly id: string;
  readonly label: string;
  readonly base: Carbon | null;
  readonly with: Carbon | null;
  /** Of both routes, each once. */
  readonly factors: readonly FactorUsed[];
}

export interface ScopeRow {
  readonly scope: ScopeName;
  readonly base: Carbon;
  readonly with: Carbon;
  readonly causes: readonly CauseRow[];
}

/** Scopes that add up to the total, each with causes that add up to it. Causes that are nothing on both pages are left out. */
export function scopeRows(facing: Facing, scale: Scale): readonly ScopeRow[] {
  const [base, other] = [scopesOf(facing.base, scale), scopesOf(facing.with, scale)];
  return facing.base.scopes.flatMap(({ scope }): ScopeRow[] => {
    const [left, right] = [base.get(scope), other.get(scope)];
    if (left === undefined || right === undefined) return [];
    return [{ scope, base: left, with: right, causes: causeRows(facing, scope, left.amount, right.amount, scale) }];
  });
}

export function carbonTotal(route: RouteFootprint, { factor, decimals }: Scale): Carbon {
  return { amount: Number((route.total * factor).toFixed(decimals)), id: route.totalId };
}

function scopesOf(route: RouteFootprint, { factor, decimals }: Scale): ReadonlyMap<ScopeName, Carbon> {
  const amounts = addingUp(
    route.scopes.map(({ amount }) => amount * factor),
    route.total * factor,
    decimals,
  );
  return new Map(
    route.scopes.map(({ scope, quantityId }, place) => [
      scope,
      { amount: amounts[place] ?? Number.NaN, id: quantityId },
    ]),
  );
}

function causeRows(facing: Facing, scope: ScopeName, base: number, other: number, scale: Scale): readonly CauseRow[] {
  const left = causesOf(facing.base, scope, base, scale);
  const right = causesOf(facing.with, scope, other, scale);
  const causes = new Map([...facing.base.causes, ...facing.with.causes].map((cause) => [cause.id, cause]));
  return [...causes.values()]
    .filter((cause) => cause.scope === scope)
    .filter(({ id }) => [facing.base, facing.with].some((route) => amountOf(route, id) !== 0))
    .map(({ id, label }) => ({
      id,
      label,
      base: left.get(id) ?? null,
      with: right.get(id) ?? null,
      factors: factorsOf(facing, id),
    }));
}

function causesOf(route: RouteFootprint, scope: ScopeName, whole: number, scale: Scale): ReadonlyMap<string, Carbon> {
  const causes = route.causes.filter((cause) => cause.scope === scope);
  const amounts = addingUp(
    causes.map(({ amount }) => amount * scale.factor),
    whole,
    scale.decimals,
  );
  return new Map(
    causes.map(({ id, quantityId }, place) => [id, { amount: amounts[place] ?? Number.NaN, id: quantityId }]),
  );
}

function amountOf(route: RouteFootprint, id: string): number {
  return route.causes.find((cause) => cause.id === id)?.amount ?? 0;
}

function factorsOf({ base, with: other }: Facing, id: string): readonly FactorUsed[] {
  const used = [base, other].flatMap((route) => route.causes.filter((cause) => cause.id === id));
  return [...new Map(used.flatMap(({ factors }) => factors.map((factor) => [factor.id, factor] as const))).values()];
}
