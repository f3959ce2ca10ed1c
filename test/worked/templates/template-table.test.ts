import { describe, expect, test } from 'vitest';
import { templateEntries } from '../../../src/paper/catalogue.ts';
import { type Evaluation, evaluated } from '../../support/evaluation.ts';
import { dryFeed, residueDry, routeOf, stockOf } from '../../support/route-sums.ts';
import { templateCase } from '../../support/template-case.ts';
import { type Measure, templateRows } from './reference-rows.ts';

const worked = new Map<string, Evaluation>();
function templateOf(template: string, beside: string): Evaluation {
  const pair = [template, beside].sort().join();
  const found = worked.get(pair) ?? evaluated(templateCase(template, beside));
  worked.set(pair, found);
  return found;
}

const rejects = ['rope', 'junk', 'coarse', 'fine', 'cleaner', 'light'];
const sludges = ['deinking', 'wash'];

/** How each figure of a template is made from the results of its case. */
const measures: Readonly<Record<Measure, (mill: Evaluation, route: string) => number>> = {
  'line yield, %': (mill, route) => (100 * stockOf(mill, route)) / dryFeed(mill, route),
  'fibre lost, %': (mill, route) => {
    const lines = routeOf(mill, route).plant.lines.map(({ id }) => id);
    const kept = lines.reduce((sum, id) => sum + mill.number(`${id}.feed`) * mill.number(`${id}.fibreYield`), 0);
    return 100 * (1 - kept / dryFeed(mill, route));
  },
  'rejects, %': (mill, route) => (100 * residueDry(mill, route, rejects)) / dryFeed(mill, route),
  'sludge, %': (mill, route) => (100 * residueDry(mill, route, sludges)) / dryFeed(mill, route),
  'preparation, kWh per t of stock': (mill, route) =>
    mill.number(`${route}.electricity.preparation`) / stockOf(mill, route),
  'refining, kWh per t of stock': (mill, route) => mill.number(`${route}.electricity.refining`) / stockOf(mill, route),
  'mill electricity, kWh/t': (mill, route) => mill.number(`${route}.electricity.total`),
  'preparation, GJ per t of stock': (mill, route) => mill.number(`${route}.heat.stock`) / stockOf(mill, route),
  'mill heat, GJ/t': (mill, route) => mill.number(`${route}.heat.total`),
  'raw oxygen demand, kg/t': (mill, route) => mill.number(`${route}.effluent.rawDemand`),
  'evaporation, m3/t': (mill, route) => mill.number(`${route}.machine.dryerWater`),
};

test('every template of the program has its table', () => {
  expect(templateRows.map(({ template }) => template).sort()).toEqual(templateEntries.map(({ id }) => id).sort());
});

describe.each(templateRows)('$template', ({ template, beside, rows, nothingFoundFor }) => {
  const mill = templateOf(template, beside);
  for (const { measure, low, high, source, outsideBecause } of rows) {
    const range = `${String(low)} to ${String(high)} (${source})`;
    if (outsideBecause === undefined)
      test(`has its ${measure}, in ${range}`, () => {
        const value = measures[measure](mill, template);

        expect(value).toBeGreaterThanOrEqual(low);
        expect(value).toBeLessThanOrEqual(high);
      });
    else
      test(`has its ${measure}, outside ${range}: ${outsideBecause}`, () => {
        const value = measures[measure](mill, template);

        expect(value < low || value > high, String(value)).toBe(true);
      });
  }

  test('is told apart where nothing was found to hold it against', () => {
    expect(rows.map(({ measure }) => measure).filter((measure) => nothingFoundFor.includes(measure))).toEqual([]);
    for (const measure of nothingFoundFor) expect(measures[measure](mill, template), measure).toBeGreaterThanOrEqual(0);
  });
});

describe('the reasons why a figure lies outside its range', () => {
  test('mechanical pulp: without its dissolved matter the virgin line would land', () => {
    const clean = templateOf('board-middle-virgin', 'board-middle').withChanges({ 'material.bctmp.dissolved': '0' });

    expect(measures['line yield, %'](clean, 'board-middle-virgin')).toBeGreaterThan(98);
  });

  test('tissue: without dissolved matter in the paper and in bleaching the oxygen demand would be below 20 kg', () => {
    const mill = templateOf('tissue', 'tissue-virgin');
    const bleaching = routeOf(mill, 'tissue').plant.lines.flatMap(({ id }) =>
      ['fibre-dissolved', 'fines-dissolved'].map((turn) => [`${id}.bleach.turns.${turn}`, '0']),
    );
    const clean = mill.withChanges({
      'material.office.dissolved': '0',
      'material.graphic.dissolved': '0',
      ...(Object.fromEntries(bleaching.filter(([id]) => mill.model.graph.positions.has(id ?? ''))) as object),
    });

    expect(measures['raw oxygen demand, kg/t'](clean, 'tissue')).toBeLessThan(20);
  });

  test('moulded fibre: with the fine screens, cleaners and thickener of board it would use more than 100 kWh', () => {
    // 18 + 12 + 5 kWh of those stages on top of its own.
    const mill = templateOf('moulded', 'moulded-virgin');

    expect(measures['preparation, kWh per t of stock'](mill, 'moulded') + 18 + 12 + 5).toBeGreaterThan(100);
  });
});

// Landing in a range proves that the figures agree with one another; it is no evidence where they are rules of thumb themselves.
test('nearly every figure behind the templates is common practice; these alone were read', () => {
  const read = templateRows.flatMap(({ template, beside }) =>
    templateOf(template, beside)
      .model.graph.inputs.filter(({ id, usual }) => id.startsWith(`${template}.`) && usual.provenance.status === 'read')
      .map(({ id }) => id.split('.').at(-1)),
  );
  const recalled = templateRows.flatMap(({ template, beside }) =>
    templateOf(template, beside).model.graph.inputs.filter(
      ({ id, usual }) => id.startsWith(`${template}.`) && usual.provenance.status === 'memory',
    ),
  );

  expect([...new Set(read)].sort()).toEqual(['heatConsistency', 'surfaceShare']);
  expect(recalled).toEqual([]);
});
