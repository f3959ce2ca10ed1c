import type { Behaviour, Nature } from '../case/case.ts';
import { type Quantity, total } from '../kernel/expression/quantity.ts';
import {
  type AccountId,
  type CostLine,
  type Statement,
  accountIdOf,
  accountPerYearIdOf,
  accounts,
  groupIdOf,
  groupPerYearIdOf,
  groups,
} from './accounts.ts';
import type { Plant } from './plant.ts';
import type { Sheet } from './sheet.ts';

/** A line as it is handed in: `amount` per tonne of product, per hour of running, or per year, as its behaviour says. */
export interface LineSpec {
  readonly account: AccountId;
  readonly key: string;
  readonly label: string;
  readonly amount: Quantity;
  readonly driverId?: string;
  readonly behaviour?: Behaviour;
  readonly avoidable?: boolean;
  readonly nature?: Nature;
  readonly note?: string;
}

type Written = CostLine & Sum;

/** Writes the lines of a route into the graph, per tonne and per year, with the sums over accounts, groups and the whole. */
export function writeStatement(sheet: Sheet, plant: Plant, specs: readonly LineSpec[]): Statement {
  const written = specs.map((spec) => writeLine(sheet, plant, spec));
  const { id, label: where } = plant.route;
  const perTonne = `${sheet.case.currency}/t`;
  const perYear = `${sheet.case.currency}/a`;
  // A total is the sum of its groups, a group of its accounts, an account of its lines: a reader can open it step by step.
  const sums = (ids: readonly [string, string], label: string, parts: readonly Sum[], note: string): Sum => ({
    perTonne: sheet.define(
      ids[0],
      label,
      'EUR/t',
      total(
        parts.map((part) => part.perTonne),
        perTonne,
      ),
      { where, note },
    ),
    perYear: sheet.define(
      ids[1],
      `${label}, per year`,
      'EUR/a',
      total(
        parts.map((part) => part.perYear),
        perYear,
      ),
      { where, note },
    ),
  });
  const byAccount = new Map(
    accounts.map((account): [AccountId, Sum] => {
      const lines = written.filter((line) => line.account === account.id);
      const ids = [accountIdOf(id, account.id), accountPerYearIdOf(id, account.id)] as const;
      return [account.id, sums(ids, account.label, lines, 'The sum of its lines.')];
    }),
  );
  const byGroup = groups.map((group) => {
    const own = accounts
      .filter((account) => account.group === group.id)
      .flatMap((account) => byAccount.get(account.id) ?? []);
    return sums(
      [groupIdOf(id, group.id), groupPerYearIdOf(id, group.id)],
      group.label,
      own,
      'The sum of its accounts.',
    );
  });
  const totalId = `${id}.cost.total`;
  const totalPerYearId = `${id}.costPerYear.total`;
  sums([totalId, totalPerYearId], 'Whole cost', byGroup, 'Every group of the statement.');
  const withoutPolicyId = `${id}.cost.withoutPolicy`;
  const policy = written.filter((line) => line.nature === 'policy').map((line) => line.perTonne);
  const whole = sheet.graph.later(totalId, perTonne);
  sheet.define(withoutPolicyId, 'Whole cost without policy items', 'EUR/t', whole.minus(total(policy, perTonne)), {
    where,
    note: 'The whole cost less taxes, levies and carbon.',
  });
  return {
    routeId: id,
    totalId,
    totalPerYearId,
    withoutPolicyId,
    lines: written.map(({ perTonne: _t, perYear: _y, ...line }) => line),
  };
}

interface Sum {
  readonly perTonne: Quantity;
  readonly perYear: Quantity;
}

/** per tonne = variable + (hourly x hours + yearly) / tonnes. */
function writeLine(sheet: Sheet, { route, mill }: Plant, spec: LineSpec): Written {
  const behaviour = spec.behaviour ?? 'per tonne';
  const yearly =
    behaviour === 'per tonne'
      ? spec.amount.times(mill.tonnes)
      : behaviour === 'per hour'
        ? spec.amount.times(mill.hours)
        : spec.amount;
  const each = behaviour === 'per tonne' ? spec.amount : yearly.dividedBy(mill.tonnes);
  const perTonneId = `${route.id}.cost.${spec.account}.${spec.key}`;
  const perYearId = `${route.id}.costPerYear.${spec.account}.${spec.key}`;
  const where = route.label;
  const note = spec.note === undefined ? {} : { note: spec.note };
  const perTonne = sheet.define(perTonneId, spec.label, 'EUR/t', each, { where, ...note });
  const perYear = sheet.define(
    perYearId,
    `${spec.label}, per year`,
    'EUR/a',
    behaviour === 'per tonne' ? perTonne.times(mill.tonnes) : yearly,
    { where },
  );
  return {
    account: spec.account,
    key: spec.key,
    label: spec.label,
    perTonneId,
    perYearId,
    driverId: spec.driverId ?? null,
    behaviour,
    avoidable: spec.avoidable ?? true,
    nature: spec.nature ?? 'market',
    perTonne,
    perYear,
  };
}
