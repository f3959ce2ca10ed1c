import { describe, expect, test } from 'vitest';
import type { Charge } from '../../src/case/case.ts';
import { evaluated } from '../support/evaluation.ts';
import { smallCase } from '../support/small-case.ts';

const charge = (id: string, behaviour: Charge['behaviour']): Charge => ({
  id,
  label: id,
  behaviour,
  avoidable: true,
  nature: 'market',
});

// Source: worked by hand for 100,000 t in 8000 h. Per tonne = variable + (hour rate x hours + yearly)/tonnes.
describe('a charge', () => {
  const mill = evaluated(
    smallCase({
      stages: [{ id: 'reject', like: 'pumps' }],
      route: { charges: [charge('selling', 'per tonne'), charge('shift', 'per hour'), charge('rent', 'per year')] },
      destinations: [{ id: 'merchant', label: 'Merchant', kind: 'sale' }],
      figures: {
        'product.hours': '8000 h/a',
        'mill.charge.selling': '5 EUR/t',
        'mill.charge.shift': '200 EUR/h',
        'mill.charge.rent': '300000 EUR/a',
        'mill.priceDifference': '7 EUR/t',
        'mill.line.reject.removal.fibre': '20 %',
        'residue.coarse.dryness': '50 %',
        'destination.merchant.haulage': '4 EUR/wet-t',
        'destination.merchant.gateFee': '0 EUR/wet-t',
        'destination.merchant.sale': '60 EUR/wet-t',
      },
    }),
  );

  test.each([
    { id: 'selling', perTonne: 5, perYear: 500_000 },
    { id: 'shift', perTonne: 16, perYear: 1_600_000 },
    { id: 'rent', perTonne: 3, perYear: 300_000 },
  ])('for $id is $perTonne a tonne and $perYear a year', ({ id, perTonne, perYear }) => {
    expect(mill.number(`mill.cost.charges.${id}`)).toBeCloseTo(perTonne, 12);
    expect(mill.number(`mill.costPerYear.charges.${id}`)).toBeCloseTo(perYear, 6);
  });

  test('is a credit where the product sells for 7 more', () => {
    expect(mill.number('mill.cost.productPrice')).toBe(-7);
  });

  test('for haulage stays whole where the residue is sold: the proceeds are a credit beside it', () => {
    // 0.25 bdt of residue, half dry, is 0.5 wet t: 2 for haulage, 30 from the merchant.
    expect(mill.number('mill.cost.residues.coarse')).toBeCloseTo(2, 12);
    expect(mill.number('mill.cost.credits.sales')).toBeCloseTo(-30, 12);
  });
});

// Source: definition. Demands are per bone-dry tonne that enters the stage from the stage before, not per tonne of the line's feed and
// not of the gross feed that goes round within a cascade. A yield of 0.8 takes 1.25 bdt: the first stage meets 1.25, the second 1.
describe('the demand of a stage behind one that rejects a fifth', () => {
  const mill = evaluated(
    smallCase({
      stages: [
        { id: 'reject', like: 'pumps' },
        { id: 'screen', like: 'pumps' },
      ],
      figures: {
        'mill.line.reject.removal.fibre': '20 %',
        'mill.line.reject.electricity': '10 kWh/bdt',
        'mill.line.screen.electricity': '50 kWh/bdt',
        'mill.line.screen.heat': '0.3 GJ/bdt',
        'mill.line.reject.dose.caustic': '4 kg/bdt',
        'mill.line.screen.dose.caustic': '2 kg/bdt',
      },
    }),
  );

  test('is counted on what is left: 12.5 and 50 kWh', () => {
    expect(mill.number('mill.line.reject.electricityUse')).toBeCloseTo(12.5, 12);
    expect(mill.number('mill.line.screen.electricityUse')).toBeCloseTo(50, 12);
    expect(mill.number('mill.electricity.preparation')).toBeCloseTo(62.5, 12);
  });

  test('for heat is 0.3 GJ, and for caustic 5 and 2 kg', () => {
    expect(mill.number('mill.heat.stock')).toBeCloseTo(0.3, 12);
    expect(mill.number('mill.chemical.caustic')).toBeCloseTo(7, 12);
  });
});
