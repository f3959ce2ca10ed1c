import { Decimal } from '../kernel/evaluate/decimal-settings.ts';
import { Failure } from '../kernel/evaluate/failure.ts';
import type { RouteModel } from '../paper/route.ts';
import type { OpenCase } from './open-case.ts';

/** Laws that the figures in force must keep. What cannot be worked out does not keep them. */
export interface CheckResult {
  readonly id: 'mass' | 'machine' | 'water' | 'costs' | 'difference' | 'carbon';
  readonly kept: boolean;
}

const nearly = new Decimal('1e-9');

export function checksOf(open: OpenCase): readonly CheckResult[] {
  return [
    {
      id: 'mass',
      kept: open.content.routes.every((route) =>
        route.lines.every((line) => isNothing(open, `${route.id}.${line.id}.closure`, `${route.id}.${line.id}.feed`)),
      ),
    },
    { id: 'machine', kept: open.content.routes.every((route) => machineCloses(open, `${route.id}.machine`)) },
    {
      id: 'water',
      kept: open.content.routes.every((route) =>
        isNothing(open, `${route.id}.water.closure`, `${route.id}.water.elsewhere`),
      ),
    },
    { id: 'costs', kept: open.content.routes.every((route) => addsUp(open, route.id)) },
    { id: 'difference', kept: differenceAddsUp(open) },
    { id: 'carbon', kept: open.model.routes.every((route) => carbonAddsUp(open, route)) },
  ];
}

function decimals({ values }: OpenCase, ids: readonly string[]): readonly Decimal[] | null {
  const found = ids.map((id) => values.of(id));
  return found.some((value) => value instanceof Failure) ? null : (found as Decimal[]);
}

function isNothing(open: OpenCase, id: string, scale: string): boolean {
  const [value, size] = decimals(open, [id, scale]) ?? [];
  return value !== undefined && size !== undefined && value.abs().lessThanOrEqualTo(size.abs().times(nearly));
}

/** P + A + S + b G y = G + s M. */
function machineCloses(open: OpenCase, id: string): boolean {
  const names = [
    'stock',
    'wetEndAdditives',
    'surfaceAdditives',
    'brokeMass',
    'brokeRejects',
    'gross',
    'wetEndLossMass',
  ].map((name) => `${id}.${name}`);
  const found = decimals(open, names);
  if (found === null) return false;
  const [stock, additives, surface, broke, rejects, gross, loss] = found as [
    Decimal,
    Decimal,
    Decimal,
    Decimal,
    Decimal,
    Decimal,
    Decimal,
  ];
  const comesIn = stock.plus(additives).plus(surface).plus(broke).minus(rejects);
  return comesIn.minus(gross).minus(loss).abs().lessThanOrEqualTo(gross.times(nearly));
}

/** The whole, which is made of groups, against the sum over all lines, and the same per year. */
function addsUp(open: OpenCase, routeId: string): boolean {
  const statement = open.model.routes.find((route) => route.statement.routeId === routeId)?.statement;
  if (statement === undefined) return false;
  const perTonne = decimals(open, [statement.totalId, ...statement.lines.map((line) => line.perTonneId)]);
  const perYear = decimals(open, [statement.totalPerYearId, ...statement.lines.map((line) => line.perYearId)]);
  return perTonne !== null && perYear !== null && sumsTo(perTonne) && sumsTo(perYear);
}

/** Carbon by scope against carbon by cause. */
function carbonAddsUp(open: OpenCase, { plant, causes }: RouteModel): boolean {
  const found = decimals(open, [`${plant.route.id}.footprint.total`, ...causes.map((cause) => cause.quantityId)]);
  return found !== null && sumsTo(found);
}

function differenceAddsUp(open: OpenCase): boolean {
  const found = decimals(open, [
    open.model.difference.totalId,
    ...open.model.difference.rows.map((row) => row.perTonneId),
  ]);
  return found !== null && sumsTo(found);
}

function sumsTo([total = new Decimal(0), ...parts]: readonly Decimal[]): boolean {
  const sum = parts.reduce((before, part) => before.plus(part), new Decimal(0));
  const size = parts.reduce((before, part) => before.plus(part.abs()), new Decimal(0));
  return sum.minus(total).abs().lessThanOrEqualTo(size.times(nearly));
}
