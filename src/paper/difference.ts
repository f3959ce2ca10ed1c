import type { Quantity } from '../kernel/expression/quantity.ts';
import {
  type CostLine,
  accountIdOf,
  accountPerYearIdOf,
  accounts,
  groupIdOf,
  groupPerYearIdOf,
  groups,
} from './accounts.ts';
import type { RouteModel } from './route.ts';
import type { Sheet } from './sheet.ts';

/** Two lines that face each other, and what separates them. */
export interface FacingLines {
  readonly account: CostLine['account'];
  readonly base: CostLine | null;
  readonly with: CostLine | null;
  readonly perTonneId: string;
  readonly perYearId: string;
}

/** The bridge between the two routes that are compared: it adds up line by line. */
export interface Difference {
  readonly baseId: string;
  readonly withId: string;
  readonly rows: readonly FacingLines[];
  readonly totalId: string;
  readonly totalPerYearId: string;
}

export function writeDifference(sheet: Sheet, routes: readonly RouteModel[]): Difference {
  const { base: baseId, with: withId } = sheet.case.compare;
  const linesOf = (id: string) => routes.find((each) => each.plant.route.id === id)?.statement.lines ?? [];
  const less = (
    id: string,
    label: string,
    unit: 'EUR/t' | 'EUR/a',
    withIds: string | null,
    baseIds: string | null,
  ): void => {
    const side = (of: string | null): Quantity =>
      of === null ? sheet.constant('0', unit) : sheet.graph.later(of, unit.replace('EUR', sheet.case.currency));
    sheet.define(id, label, unit, side(withIds).minus(side(baseIds)), { where: 'Difference' });
  };
  for (const { id, label } of accounts) {
    less(accountIdOf('difference', id), label, 'EUR/t', accountIdOf(withId, id), accountIdOf(baseId, id));
    less(
      accountPerYearIdOf('difference', id),
      `${label}, per year`,
      'EUR/a',
      accountPerYearIdOf(withId, id),
      accountPerYearIdOf(baseId, id),
    );
  }
  for (const { id, label } of groups) {
    less(groupIdOf('difference', id), label, 'EUR/t', groupIdOf(withId, id), groupIdOf(baseId, id));
    less(
      groupPerYearIdOf('difference', id),
      `${label}, per year`,
      'EUR/a',
      groupPerYearIdOf(withId, id),
      groupPerYearIdOf(baseId, id),
    );
  }
  const rows = facing(linesOf(baseId), linesOf(withId)).map((row, place): FacingLines => {
    const key = row.with?.key ?? row.base?.key ?? String(place);
    const perTonneId = `difference.cost.${row.account}.${key}`;
    const perYearId = `difference.costPerYear.${row.account}.${key}`;
    const label = row.with?.label ?? row.base?.label ?? '';
    less(perTonneId, label, 'EUR/t', row.with?.perTonneId ?? null, row.base?.perTonneId ?? null);
    less(perYearId, `${label}, per year`, 'EUR/a', row.with?.perYearId ?? null, row.base?.perYearId ?? null);
    return { ...row, perTonneId, perYearId };
  });
  less('difference.total', 'Difference of the whole cost', 'EUR/t', `${withId}.cost.total`, `${baseId}.cost.total`);
  less(
    'difference.totalPerYear',
    'Difference of the whole cost, per year',
    'EUR/a',
    `${withId}.costPerYear.total`,
    `${baseId}.costPerYear.total`,
  );
  less(
    'difference.withoutPolicy',
    'Difference without policy items',
    'EUR/t',
    `${withId}.cost.withoutPolicy`,
    `${baseId}.cost.withoutPolicy`,
  );
  return { baseId, withId, rows, totalId: 'difference.total', totalPerYearId: 'difference.totalPerYear' };
}

type Facing = Pick<FacingLines, 'account' | 'base' | 'with'>;

/** Lines with the same key face each other; what is left on each side of an account is paired in order, as pulp faces paper. */
function facing(base: readonly CostLine[], withLines: readonly CostLine[]): readonly Facing[] {
  return accounts.flatMap(({ id: account }) => {
    const left = base.filter((line) => line.account === account);
    const right = withLines.filter((line) => line.account === account);
    const alike = left.flatMap((line): Facing[] => {
      const other = right.find((each) => each.key === line.key);
      return other === undefined ? [] : [{ account, base: line, with: other }];
    });
    const loneLeft = left.filter((line) => !right.some((each) => each.key === line.key));
    const loneRight = right.filter((line) => !left.some((each) => each.key === line.key));
    const lone = Array.from({ length: Math.max(loneLeft.length, loneRight.length) }, (_, place): Facing => ({
      account,
      base: loneLeft[place] ?? null,
      with: loneRight[place] ?? null,
    }));
    return [...alike, ...lone];
  });
}
