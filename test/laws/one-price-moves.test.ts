import { describe, expect, test } from 'vitest';
import { evaluateDecimal } from '../../src/kernel/evaluate/decimal.ts';
import { decimalReader } from '../support/decimal-reader.ts';
import { randomModel } from '../support/random-figures.ts';

/** Which lines a price may move: an account, or one line of it as "account.key". In trade terms, not read from the graph. */
const movedBy: readonly (readonly [RegExp, (name: string) => readonly string[]])[] = [
  [/^price\.electricity$/u, () => ['electricity', 'water.treatment']],
  [/^price\.(heat|fuel|fuelBasis)$/u, () => ['heat', 'credits.energy']],
  [/^price\.carbon$/u, () => ['carbon.carbon']],
  [/^price\.water$/u, () => ['water.fresh']],
  [/^price\.effluent$/u, () => ['water.effluent']],
  [/^price\.oxygenDemand$/u, () => ['water.load']],
  [/^material\.(\w+)\.price$/u, (material) => [`fibre.${material}`]],
  [/^material\.(\w+)\.(?:freight|handling)$/u, (material) => [`freight.${material}`]],
  [/^chemical\.([\w-]+)\.price$/u, (chemical) => [`chemicals.${chemical}`]],
  [/^additive\.(\w+)\.price$/u, (additive) => [`additives.${additive}`]],
  [/^destination\.\w+\.(?:haulage|gateFee)$/u, () => ['residues']],
  [/^destination\.\w+\.tax$/u, () => ['residues.landfillTax']],
  [/^destination\.\w+\.sale$/u, () => ['credits.sales']],
  // Extra hours are paid by hourly charges too.
  [/^\w+\.charge\.(\w+)$/u, (charge) => [`charges.${charge}`, 'machineEffect']],
  [/^\w+\.labour$/u, () => ['labour']],
  [/^\w+\.maintenance$/u, () => ['maintenance']],
  [/^machine\.fixed$/u, () => ['machineFixed']],
  [/^\w+\.priceDifference$/u, () => ['productPrice']],
  [/^\w+\.capital$/u, () => ['capital']],
];

function linesMovedBy(input: string): readonly string[] | null {
  for (const [pattern, lines] of movedBy) {
    const match = pattern.exec(input);
    if (match !== null) return lines(match[1] ?? '');
  }
  return null;
}

// Law: a price moves the lines that use it and no other; a figure of one route leaves the other alone.
describe('changing one price', () => {
  const seeds = [5001, 5002, 5003, 5004, 5005, 5006];
  test.each(seeds.map((seed) => ({ seed })))(
    'moves only the lines that use it (seed $seed)',
    { timeout: 30_000 },
    ({ seed }) => {
      const { model, figures: drawn } = randomModel(seed, { lines: 2, stages: 4 });
      // A machine that is sold out loses tonnes, and every price that follows the tonne says what they are worth.
      const figures = new Map(drawn).set('machine.soldOut', '0');
      const before = decimalReader(model, evaluateDecimal(model.graph, figures));
      const lines = model.routes.flatMap(({ plant, statement }) =>
        statement.lines.map((line) => ({ ...line, route: plant.route.id })),
      );
      const kinds = new Set<string>();

      for (const { id } of model.graph.inputs) {
        const allowed = linesMovedBy(id);
        const digits = figures.get(id);
        if (allowed === null || digits === undefined || Number(digits) === 0) continue;
        const raised = new Map(figures).set(id, String(1.1 * Number(digits)));
        const after = decimalReader(model, evaluateDecimal(model.graph, raised));
        const moved = lines.filter((line) => !after(line.perTonneId).equals(before(line.perTonneId)));

        const route = /^(base|other)\./u.exec(id)?.[1];
        const strangers = moved.filter(
          (line) =>
            !(allowed.includes(line.account) || allowed.includes(`${line.account}.${line.key}`)) ||
            (route !== undefined && line.route !== route),
        );
        expect(
          strangers.map((line) => line.perTonneId),
          `seed ${String(seed)}, ${id}`,
        ).toEqual([]);
        // A price that sets one line alone must move it, unless the line is nothing.
        const stuck = lines.filter(
          (line) =>
            /^(fibre|freight|chemicals|additives|charges)\./u.test(allowed[0] ?? '') &&
            allowed.includes(`${line.account}.${line.key}`) &&
            (route === undefined || line.route === route) &&
            !before(line.perTonneId).isZero() &&
            !moved.includes(line),
        );
        expect(
          stuck.map((line) => line.perTonneId),
          `seed ${String(seed)}, ${id} has no effect`,
        ).toEqual([]);
        if (moved.length > 0) kinds.add(id);
      }
      // Most prices move something; those that do not belong to a material, outlet or tax that the case does not use.
      expect(kinds.size).toBeGreaterThan(12);
    },
  );
});
