import { describe, expect, it } from 'vitest';
import { compare, restoreDefault } from '../../src/index.ts';
import { accounts } from '../../src/paper/accounts.ts';
import { workOut } from '../../src/study/open-case.ts';
import { demonstration, valueOf } from '../examples/demonstration.ts';
import { smallCase } from '../support/small-case.ts';

const open = demonstration();
const comparison = compare(open);
const { values } = open;

describe('the comparison of a case', () => {
  it('names the product, the money and the routes in the order of the case', () => {
    expect(comparison.product).toEqual({
      name: open.content.product.name,
      moisture: 0.08,
      tonnesPerYear: 96_000,
    });
    expect([comparison.currency, comparison.priceYear]).toEqual(['EUR', '2024']);
    expect(comparison.routes.map(({ id, label }) => [id, label])).toEqual(
      open.content.routes.map(({ id, label }) => [id, label]),
    );
    expect([comparison.difference.base, comparison.difference.with]).toEqual(['virgin', 'recovered']);
  });

  it('gives every account of every route as the graph has it', () => {
    for (const route of comparison.routes) {
      expect(route.accounts.map(({ id }) => id)).toEqual(accounts.map(({ id }) => id));
      for (const account of route.accounts) {
        expect(account.perTonneExact).toBe(values.exact(`${route.id}.cost.${account.id}`));
        expect(account.perYearExact).toBe(values.exact(`${route.id}.costPerYear.${account.id}`));
      }
    }
  });

  const everyMoney = [
    ...comparison.routes.flatMap(({ id, accounts: own, totals }) => [
      ...own.map((account) => ({ name: `${id} ${account.id}`, ...account })),
      {
        name: `${id} whole`,
        perTonne: totals.costPerTonne,
        perYear: totals.costPerYear,
        perTonneExact: totals.costPerTonneExact,
        perYearExact: totals.costPerYearExact,
      },
    ]),
    ...comparison.difference.accounts.map((account) => ({ name: `difference ${account.id}`, ...account })),
    { name: 'difference whole', ...comparison.difference },
  ];

  it('has numbers that are their exact texts, rounded once', () => {
    expect(everyMoney).toHaveLength(3 * (accounts.length + 1));
    for (const { name, perTonne, perYear, perTonneExact, perYearExact } of everyMoney) {
      expect(perTonneExact, name).toMatch(/^-?\d+(\.\d+)?$/u);
      expect(perTonne, name).toBe(Number(perTonneExact));
      expect(perYear, name).toBe(Number(perYearExact));
    }
  });

  it('has for a year the tonnes of the year times the money of a tonne', () => {
    for (const { name, perTonne, perYear } of everyMoney)
      expect(Math.abs(perYear - perTonne * 96_000), name).toBeLessThanOrEqual(Math.abs(perYear) * 1e-12);
  });

  it('has accounts that add up to the whole, and differences of the second route less the first', () => {
    const [virgin, recovered] = comparison.routes;
    for (const route of comparison.routes) {
      const sum = route.accounts.reduce((before, { perTonne }) => before + perTonne, 0);
      expect(sum).toBeCloseTo(route.totals.costPerTonne, 9);
    }
    comparison.difference.accounts.forEach((account, place) => {
      expect(account.perTonne).toBeCloseTo(
        (recovered?.accounts[place]?.perTonne ?? NaN) - (virgin?.accounts[place]?.perTonne ?? NaN),
        9,
      );
    });
    expect(comparison.difference.perTonne).toBeCloseTo(
      (recovered?.totals.costPerTonne ?? NaN) - (virgin?.totals.costPerTonne ?? NaN),
      9,
    );
  });

  it('leaves landfill tax and carbon out of the cost without policy', () => {
    for (const { id, totals } of comparison.routes) {
      const policy = values.number(`${id}.cost.residues.landfillTax`) + values.number(`${id}.cost.carbon.carbon`);
      expect(policy).toBeGreaterThan(0);
      expect(totals.costPerTonneWithoutPolicy).toBeCloseTo(totals.costPerTonne - policy, 9);
    }
  });

  it('gives the quantities of the graph: energy, water, lines, residues and what is bought', () => {
    for (const route of comparison.routes) {
      const { id } = route;
      expect(route.energy).toEqual({
        electricity: values.number(`${id}.electricity.total`),
        heat: values.number(`${id}.heat.total`),
      });
      expect(route.water).toEqual({
        fresh: values.number(`${id}.machine.freshWater`),
        effluent: values.number(`${id}.water.effluent`),
      });
      for (const line of route.lines) {
        expect(line.yield).toBe(values.number(`${line.id}.yield`));
        expect(line.fibreYield).toBe(values.number(`${line.id}.fibreYield`));
        expect(line.feed * line.yield).toBeCloseTo(line.stock, 12);
      }
      for (const residue of route.residues) {
        expect(residue.dry).toBe(values.number(`${id}.residue.${residue.stream}.dry`));
        const hauled = residue.destination.reduce((sum, { wet }) => sum + wet, 0);
        expect(hauled).toBeCloseTo(residue.wet, 12);
      }
      for (const bought of route.purchased) {
        expect(bought.boneDry).toBe(values.number(`${id}.bought.${bought.material}`));
        const dryness = 1 - values.number(`material.${bought.material}.moisture`);
        expect(bought.asReceived * dryness).toBeCloseTo(bought.boneDry, 12);
      }
      expect(route.purchased.map(({ material }) => material)).toEqual([
        ...new Set(route.lines.map((line) => line.id.slice(id.length + 1))),
      ]);
    }
  });

  it('takes the water of a route whose effluent is given from the other end of the balance', () => {
    const small = valueOf(workOut(smallCase({ stages: [{ id: 'slush', like: 'pumps' }] })));
    const [route] = compare(small).routes;

    expect(route?.water).toEqual({ fresh: small.values.number('mill.water.fresh'), effluent: 10 });
  });

  it('leaves numbers out, as not a number and empty text, where a figure is missing', () => {
    const gap = valueOf(restoreDefault(open, 'recovered.mixed.share'));
    const [virgin, recovered] = compare(gap).routes;

    expect(virgin?.totals).toEqual(comparison.routes[0]?.totals);
    expect(recovered?.totals.costPerTonne).toBeNaN();
    expect(recovered?.totals.costPerTonneExact).toBe('');
    expect(compare(gap).difference.perTonne).toBeNaN();
  });
});
