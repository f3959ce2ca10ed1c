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

interface Written extends CostLine {
  readonly perTonne: Quantity;
  readonly perYear: Quantity;
}

/** Writes the lines of a route into the graph, per tonne and per year, with the sums over accounts, groups and the whole. */
export function writeStatement(sheet: Sheet, plant: Plant, specs: readonly LineSpec[]): Statement {
  const written = specs.map((spec) => writeLine(sheet, plant, spec));
  const { id, label: where } = plant.route;
  const sum = (
    sumId: string,
    label: string,
    unit: 'EUR/t' | 'EUR/a',
    lines: readonly Written[],
    note: string,
  ): Quantity =>
    sheet.define(
      sumId,
      label,
      unit,
      total(
        lines.map((line) => (unit === 'EUR/t' ? line.perTonne : line.perYear)),
        `${sheet.case.currency}/${unit === 'EUR/t' ? 't' : 'a'}`,
      ),
      { where, note },
    );
  for (const account of accounts) {
    const lines = written.filter((line) => line.account === account.id);
    sum(accountIdOf(id, account.id), account.label, 'EUR/t', lines, 'The sum of its lines.');
    sum(accountPerYearIdOf(id, account.id), `${account.label}, per year`, 'EUR/a', lines, 'The sum of its lines.');
  }
  for (const group of groups) {
    const lines = written.filter((line) => accounts.find((account) => account.id === line.account)?.group === group.id);
    sum(groupIdOf(id, group.id), group.label, 'EUR/t', lines, 'The sum of its lines.');
    sum(groupPerYearIdOf(id, group.id), `${group.label}, per year`, 'EUR/a', lines, 'The sum of its lines.');
  }
  const totalId = `${id}.cost.total`;
  const totalPerYearId = `${id}.costPerYear.total`;
  const withoutPolicyId = `${id}.cost.withoutPolicy`;
  sum(totalId, 'Whole cost', 'EUR/t', written, 'Every line of the statement.');
  sum(totalPerYearId, 'Whole cost, per year', 'EUR/a', written, 'Every line of the statement.');
  sum(
    withoutPolicyId,
    'Whole cost without policy items',
    'EUR/t',
    written.filter((line) => line.nature !== 'policy'),
    'Every line but taxes, levies and carbon.',
  );
  return {
    routeId: id,
    totalId,
    totalPerYearId,
    withoutPolicyId,
    lines: written.map(({ perTonne: _t, perYear: _y, ...line }) => line),
  };
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
