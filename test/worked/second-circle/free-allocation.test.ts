import { describe, expect, test } from 'vitest';
import type { Case } from '../../../src/case/case.ts';
import { type Evaluation, evaluated } from '../../support/evaluation.ts';
import { smallCase } from '../../support/small-case.ts';

/** 4 GJ of heat from a fuel of 60.98 kg a GJ is 243.92 kg a tonne: 24,392 t a year from 100,000 t of product. */
function mill(carbonPrice: NonNullable<Case['carbonPrice']>, freeTonnes: string): Evaluation {
  const content = smallCase({
    stages: [{ id: 'slush', like: 'pumps' }],
    route: { heat: 'own boiler' },
    figures: {
      'mill.machine.heatPerTonneWater': '0 GJ/m3',
      'mill.machine.otherHeatPerGrossTonne': '4 GJ/gt',
      'boiler.efficiency': '100 %',
      'carbon.fuel': '60.98 kgCO2e/GJ',
      'price.carbon': '75 EUR/tCO2e',
      'carbon.freeAllocation': `${freeTonnes} tCO2e/a`,
    },
  });
  return evaluated({ ...content, carbonPrice });
}

// Source: worked by hand: (24,392 - 18,000) x 75 = 6,392 x 75 = 479,400, and 24,392 x 75 = 1,829,400, less 18,000 x 75 = 1,350,000.
describe('24,392 t emitted a year at 75, with 18,000 t free', () => {
  const cash = mill({}, '18000');
  const opportunity = mill({ view: 'opportunity' }, '18000');

  test('costs 479,400 in cash', () => {
    expect(cash.number('mill.carbon.priced')).toBe(243.92);
    expect(cash.number('mill.costPerYear.carbon')).toBe(479_400);
    expect(cash.number('mill.costPerYear.carbon.carbon')).toBe(479_400);
  });

  test('costs 1,829,400 as an opportunity, beside an income of 1,350,000', () => {
    expect(opportunity.number('mill.costPerYear.carbon.carbon')).toBe(1_829_400);
    expect(opportunity.number('mill.costPerYear.carbon.freeAllocation')).toBe(-1_350_000);
    expect(opportunity.number('mill.costPerYear.carbon')).toBe(479_400);
  });

  test('brings the same income in a route that emits nothing, so that routes differ by all their carbon', () => {
    // The other route is on bought heat and pays for none.
    expect(opportunity.number('other.costPerYear.carbon.carbon')).toBe(0);
    expect(opportunity.number('other.costPerYear.carbon.freeAllocation')).toBe(-1_350_000);
    expect(opportunity.number('difference.costPerYear.carbon')).toBe(1_829_400);
    // In cash, an allocation that the other route does not need is worth nothing to it.
    expect(cash.number('other.costPerYear.carbon')).toBe(0);
    expect(cash.number('difference.costPerYear.carbon')).toBe(479_400);
  });

  test('is in the headline without policy items in neither view', () => {
    expect(cash.exact('mill.cost.withoutPolicy').toString()).toBe(
      opportunity.exact('mill.cost.withoutPolicy').toString(),
    );
  });
});

describe('more free than is emitted, 30,000 t', () => {
  test('earns nothing in cash, unless a surplus is sold: 5,608 x 75 = 420,600', () => {
    expect(mill({}, '30000').number('mill.costPerYear.carbon')).toBe(0);
    expect(mill({ surplus: true }, '30000').number('mill.costPerYear.carbon')).toBe(-420_600);
    expect(mill({ view: 'cash', surplus: true }, '30000').number('mill.costPerYear.carbon')).toBe(-420_600);
  });

  test('is an income all the same as an opportunity', () => {
    expect(mill({ view: 'opportunity' }, '30000').number('mill.costPerYear.carbon')).toBe(-420_600);
  });
});
