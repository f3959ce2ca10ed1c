import { describe, expect, test } from 'vitest';
import { components } from '../../src/paper/components.ts';
import { type Evaluation, evaluated } from '../support/evaluation.ts';
import { templateCase } from '../support/template-case.ts';
import { boughtAsReceived, dryFeed, residueDry, routeOf, stockOf } from '../support/route-sums.ts';

const pairs = {
  testliner: 'kraftliner',
  newsprint: 'newsprint-virgin',
  tissue: 'tissue-virgin',
  printing: 'printing-virgin',
  'board-middle': 'board-middle-virgin',
  moulded: 'moulded-virgin',
} as const;
type Template = keyof typeof pairs;
const worked = new Map<Template, Evaluation>();
function templateOf(template: Template): Evaluation {
  const found = worked.get(template) ?? evaluated(templateCase(template, pairs[template]));
  worked.set(template, found);
  return found;
}
const percent = (share: number): number => 100 * share;

// Trade practice, no source: planning ranges of dry stock per dry recovered paper, by product.
describe('the line yield of the recovered route, all lines together, lies in the planning range', () => {
  test.each([
    { template: 'newsprint', low: 80, high: 88 },
    { template: 'tissue', low: 55, high: 80 },
    { template: 'printing', low: 60, high: 70 },
    { template: 'testliner', low: 90, high: 96 },
    { template: 'board-middle', low: 88, high: 95 },
    { template: 'moulded', low: 88, high: 97 },
  ] as const)('of $template, $low to $high %', ({ template, low, high }) => {
    const mill = templateOf(template);

    const lineYield = percent(stockOf(mill, template) / dryFeed(mill, template));

    expect(lineYield).toBeGreaterThan(low);
    expect(lineYield).toBeLessThan(high);
  });
});

// Source: American Paper Institute averages, about 1991, quoted in "Recycled paper and sludge" (J. Usherson), Recycled Paper News,
// 1992, p. 1: product per waste paper 90 % paperboard and containerboard, 85 % newsprint, 75 % tissue, 70 % printing and writing (60 %
// in some mills). The source gives no range; three points either side are ours. None of the four templates lands, and each says why.
describe('product per paper as received against the American averages of about 1991', () => {
  const productPerPaper = (template: Template): number => percent(1 / boughtAsReceived(templateOf(template), template));

  test('is 93.3 % for testliner, just above 90 +- 3: surface starch is 4 % of it', () => {
    expect(productPerPaper('testliner').toFixed(1)).toBe('93.3');
    expect(productPerPaper('testliner') - 4).toBeLessThan(93);
  });

  test('is 80 % for newsprint, below 85 +- 3: ash goes with the sludge and moisture comes off the paper bought', () => {
    expect(productPerPaper('newsprint').toFixed(0)).toBe('80');
  });

  test('is 67 % for tissue, below 75 +- 3: the residue rows for tissue ask for 27 % and more', () => {
    expect(productPerPaper('tissue').toFixed(0)).toBe('67');
  });

  test('is 75 % for printing, above 60 to 73: filler and starch make more paper than stock', () => {
    expect(productPerPaper('printing').toFixed(0)).toBe('75');
  });

  // Source: "LCA data description", FEFCO, undated, material inputs: 1.0569 t of recovered paper per tonne of testliner; 1.02 to 1.10
  // is our width.
  test('is 1.07 t of paper per tonne of testliner, where European mills report 1.057', () => {
    expect(boughtAsReceived(templateOf('testliner'), 'testliner').toFixed(2)).toBe('1.07');
  });
});

// Source: "Handbook of Paper and Board" (H. Holik, ed.), Wiley-VCH, 2006, waste table; from memory. Dry waste, % of dry recovered paper.
describe('waste of the recovered lines, in per cent of dry recovered paper, lies in the remembered range', () => {
  const streams = ['rope', 'junk', 'coarse', 'fine', 'cleaner', 'light', 'deinking', 'wash'];
  test.each([
    { template: 'newsprint', of: streams, what: 'in total', low: 15, high: 20 },
    { template: 'newsprint', of: ['deinking'], what: 'as flotation sludge', low: 8, high: 13 },
    { template: 'newsprint', of: ['wash'], what: 'as process water sludge', low: 2, high: 5 },
    { template: 'tissue', of: streams, what: 'in total', low: 27, high: 45 },
    { template: 'tissue', of: ['deinking'], what: 'as flotation sludge', low: 8, high: 13 },
    { template: 'tissue', of: ['wash'], what: 'as process water sludge', low: 15, high: 25 },
    { template: 'printing', of: streams, what: 'in total', low: 32, high: 40 },
    { template: 'printing', of: ['deinking'], what: 'as flotation sludge', low: 12, high: 15 },
    { template: 'printing', of: ['wash'], what: 'as process water sludge', low: 15, high: 25 },
    { template: 'testliner', of: streams, what: 'in total', low: 4, high: 9 },
    { template: 'board-middle', of: streams, what: 'in total', low: 4, high: 9 },
  ] as const)('of $template $what, $low to $high', ({ template, of, low, high }) => {
    const mill = templateOf(template);

    const waste = percent(residueDry(mill, template, of) / dryFeed(mill, template));

    expect(waste).toBeGreaterThan(low);
    expect(waste).toBeLessThan(high);
  });
});

describe('residues of the newsprint line against figures that were read', () => {
  const mill = templateOf('newsprint');

  // Source: "Paper mill rejects", paperacademy.net, undated, text with figure 10.6: 4 to 6 % dry of air-dry recovered paper, six mills.
  test('rejects are 4 to 6 % of air-dry paper', () => {
    const rejects = residueDry(mill, 'newsprint', ['rope', 'junk', 'coarse', 'fine', 'cleaner']);

    const share = percent(rejects / (dryFeed(mill, 'newsprint') / 0.9));

    expect(share).toBeGreaterThan(4);
    expect(share).toBeLessThan(6);
  });

  // Source: "Management of wastewater treatment sludges", chapter abstract, undated: 80 to 150 kg dry per tonne of recycled pulp.
  test('flotation sludge is 80 to 150 kg per tonne of stock', () => {
    const sludge = (1000 * residueDry(mill, 'newsprint', ['deinking'])) / stockOf(mill, 'newsprint');

    expect(sludge).toBeGreaterThan(80);
    expect(sludge).toBeLessThan(150);
  });

  // Source: "Paper mill deinking sludges", paperacademy.net, undated, text with figure 10.7: more than 55 % inorganic.
  test('flotation sludge is more than 55 % inorganic', () => {
    const stages = routeOf(mill, 'newsprint').plant.lines.flatMap((line) => line.stages);
    const cells = stages.filter((stage) => stage.kind === 'flotation cell');
    const sum = (components: readonly string[]): number =>
      mill.sumOfPresent(cells.flatMap(({ id }) => components.map((each) => `${id}.rejects.${each}`)));

    expect(cells).toHaveLength(2);
    expect(percent(sum(['ash']) / sum(components))).toBeGreaterThan(55);
  });
});

// Source: B. A. Thorp, "Use best practices to drive energy out", Forum on Energy, Appleton 2006, benchmark table (columns assigned by
// position), per tonne of paper: recycled linerboard 121.3 kWh and 0.930 GJ, recycled tissue 330.7 kWh and 2.093 GJ; +-15 % is ours.
describe('energy of preparation against American benchmarks', () => {
  test.each([
    { template: 'testliner', benchmark: 121.3 },
    { template: 'tissue', benchmark: 330.7 },
  ] as const)('electricity of $template is within 15 % of $benchmark kWh per tonne of paper', (row) => {
    const used = templateOf(row.template).number(`${row.template}.electricity.preparation`);

    expect(Math.abs(used / row.benchmark - 1)).toBeLessThan(0.15);
  });

  // Pulper heat was set so that heat per tonne of stock meets the benchmark, so this is no evidence. Per tonne of paper, which is what
  // the benchmark counts, both templates fall short, for less than a tonne of stock is needed.
  test.each([
    { template: 'testliner', benchmark: 0.93, perStock: '0.81', perPaper: '0.72' },
    { template: 'tissue', benchmark: 2.093, perStock: '1.82', perPaper: '1.73' },
  ] as const)('heat of $template meets $benchmark GJ per tonne of stock, not of paper', (row) => {
    const mill = templateOf(row.template);
    const perPaper = mill.number(`${row.template}.heat.stock`);
    const perStock = perPaper / stockOf(mill, row.template);

    expect(perStock.toFixed(2)).toBe(row.perStock);
    expect(Math.abs(perStock / row.benchmark - 1)).toBeLessThan(0.15);
    expect(perPaper.toFixed(2)).toBe(row.perPaper);
    expect(perPaper).toBeLessThan(0.85 * row.benchmark);
  });
});
