import { describe, expect, test } from 'vitest';
import { Decimal } from '../../src/kernel/evaluate/decimal-settings.ts';
import { evaluateDecimal } from '../../src/kernel/evaluate/decimal.ts';
import {
  accountIdOf,
  accountPerYearIdOf,
  accounts,
  groupIdOf,
  groupPerYearIdOf,
  groups,
} from '../../src/paper/accounts.ts';
import { decimalReader } from '../support/decimal-reader.ts';
import { randomModel } from '../support/random-figures.ts';

// Law: parts add up to wholes, to the last digits that 34-digit arithmetic keeps.
const cases = Array.from({ length: 30 }, (_, at) => {
  const { seed, model, figures } = randomModel(4001 + at);
  return { seed, model, at: decimalReader(model, evaluateDecimal(model.graph, figures)) };
});

function expectSum(parts: readonly Decimal[], whole: Decimal, message: string): void {
  const largest = parts.reduce((most, part) => Decimal.max(most, part.abs()), whole.abs());
  const off = Decimal.sum(0, ...parts).minus(whole);
  expect(off.abs().lessThanOrEqualTo(largest.times('1e-28')), `${message}: off by ${off.toString()}`).toBe(true);
}

describe('over 30 random cases', () => {
  test('the lines of an account add up to the account, and accounts to groups and to the whole cost', () => {
    for (const { seed, model, at } of cases) {
      for (const { statement, plant } of model.routes) {
        const route = plant.route.id;
        const label = (what: string) => `seed ${String(seed)}, ${route}, ${what}`;
        for (const { id } of accounts) {
          const lines = statement.lines.filter((line) => line.account === id);
          expectSum(
            lines.map((line) => at(line.perTonneId)),
            at(accountIdOf(route, id)),
            label(id),
          );
          expectSum(
            lines.map((line) => at(line.perYearId)),
            at(accountPerYearIdOf(route, id)),
            label(`${id} a year`),
          );
        }
        for (const { id } of groups) {
          const within = accounts.filter((account) => account.group === id);
          expectSum(
            within.map((each) => at(accountIdOf(route, each.id))),
            at(groupIdOf(route, id)),
            label(id),
          );
          const yearly = within.map((each) => at(accountPerYearIdOf(route, each.id)));
          expectSum(yearly, at(groupPerYearIdOf(route, id)), label(`${id} a year`));
        }
        expectSum(
          groups.map(({ id }) => at(groupIdOf(route, id))),
          at(statement.totalId),
          label('total'),
        );
      }
    }
  });

  test('a year is the tonnes of the year times a tonne', () => {
    for (const { seed, model, at } of cases) {
      for (const { statement } of model.routes) {
        for (const line of statement.lines)
          expectSum([at(line.perTonneId).times(at('product.tonnes'))], at(line.perYearId), `seed ${String(seed)}`);
        expectSum([at(statement.totalId).times(at('product.tonnes'))], at(statement.totalPerYearId), String(seed));
      }
    }
  });

  test('the difference adds up line by line, and every line of both routes stands in it once', () => {
    for (const { seed, model, at } of cases) {
      const { rows, totalId, totalPerYearId } = model.difference;
      const [base, other] = model.routes.map(({ statement }) => statement);
      expectSum(
        rows.map((row) => at(row.perTonneId)),
        at(totalId),
        `seed ${String(seed)}, per tonne`,
      );
      expectSum(
        rows.map((row) => at(row.perYearId)),
        at(totalPerYearId),
        `seed ${String(seed)}, per year`,
      );
      expectSum([at('other.cost.total'), at('base.cost.total').negated()], at(totalId), `seed ${String(seed)}, total`);

      const shown = (side: 'base' | 'with') => rows.flatMap((row) => row[side]?.perTonneId ?? []).sort();
      expect(shown('base')).toEqual(base?.lines.map((line) => line.perTonneId).sort());
      expect(shown('with')).toEqual(other?.lines.map((line) => line.perTonneId).sort());
    }
  });

  test('the cost without policy items leaves out exactly the policy items', () => {
    for (const { seed, model, at } of cases) {
      for (const { statement } of model.routes) {
        const policy = statement.lines.filter((line) => line.nature === 'policy').map((line) => at(line.perTonneId));
        expectSum([at(statement.withoutPolicyId), ...policy], at(statement.totalId), `seed ${String(seed)}`);
      }
    }
  });
});
