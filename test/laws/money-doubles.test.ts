import { expect, test } from 'vitest';
import { type Changes, evaluateDecimal } from '../../src/kernel/evaluate/decimal.ts';
import { inForce } from '../../src/kernel/graph/input-declaration.ts';
import { parseUnit } from '../../src/kernel/units/unit.ts';
import type { Model } from '../../src/paper/model.ts';
import { decimalReader } from '../support/decimal-reader.ts';
import { randomModel } from '../support/random-figures.ts';

/** Every figure in the money of the case times a factor; a foreign price is left and its rate of exchange grows instead. */
function moneyTimes(factor: number, { graph }: Model, figures: Changes): Changes {
  return new Map(
    graph.inputs.map((input): [string, string] => {
      const digits = figures.get(input.id) ?? inForce(input) ?? '';
      const isMoney = parseUnit(input.entryUnit).exponents.get('EUR') === 1;
      return [input.id, isMoney ? String(factor * Number(digits)) : digits];
    }),
  );
}

// Law: costs are linear in all money together: prices, fees, yearly amounts and capital.
test('doubling every money figure doubles every cost line, over 25 random cases', () => {
  let moved = 0;
  for (let seed = 2001; seed <= 2025; seed += 1) {
    const { model, figures } = randomModel(seed, { lines: 2, stages: 3 });
    const once = decimalReader(model, evaluateDecimal(model.graph, figures));
    const twice = decimalReader(model, evaluateDecimal(model.graph, moneyTimes(2, model, figures)));

    for (const { statement } of model.routes) {
      for (const id of [...statement.lines.flatMap((line) => [line.perTonneId, line.perYearId]), statement.totalId]) {
        const [before, after] = [once(id), twice(id)];
        const off = after.minus(before.times(2)).abs();
        expect(off.lessThanOrEqualTo(before.abs().times('1e-25')), `seed ${String(seed)}, ${id}`).toBe(true);
        if (!before.isZero()) moved += 1;
      }
    }
  }
  expect(moved).toBeGreaterThan(1000);
});
