import { describe, expect, test } from 'vitest';
import { evaluated } from '../support/evaluation.ts';
import { smallCase } from '../support/small-case.ts';

// Source: "Benchmark the Fuel Cost of Steam Generation", Energy Tips: Steam, Tip Sheet 15, US Department of Energy, 2012, tables 1
// and 2 (worked case from memory): gas at 8.00 USD/MMBtu, 1006 Btu per lb of steam, efficiency 85.7 %, gives 9.39 USD per 1000 lb.
test('steam of 1006 Btu/lb from gas at 8.00 USD/MMBtu in a boiler of 85.7 % costs 9.39 USD per 1000 lb', () => {
  const mill = evaluated(
    smallCase({
      currency: 'USD',
      stages: [{ id: 'slush', like: 'pumps' }],
      route: { heat: 'own boiler' },
      figures: { 'price.fuel': '8 USD/MMBtu', 'boiler.efficiency': '85.7 %' },
    }),
  );

  // 1000 lb x 1006 Btu/lb = 1.006 MMBtu = 1.06138619 GJ.
  const perThousandPounds = mill.number('price.usefulHeat') * 1.006 * 1.05505585;

  expect(perThousandPounds.toFixed(2)).toBe('9.39');
});

// Source: fuel factors hold per GJ of net or of gross calorific value; natural gas holds 1.108 times as many GJ gross as net (from
// memory). Gas at 9 per GJ gross is 9.972 per GJ net; at 90 % that is 11.08 per GJ of heat.
test('gas priced on its gross calorific value costs 1.108 times as much per GJ of heat', () => {
  const mill = evaluated(
    smallCase({
      stages: [{ id: 'slush', like: 'pumps' }],
      route: { heat: 'own boiler' },
      figures: { 'price.fuel': '9 EUR/GJ', 'boiler.efficiency': '90 %', 'price.fuelBasis': '1.108 1' },
    }),
  );

  expect(mill.number('price.usefulHeat')).toBeCloseTo(11.08, 12);
});

// Source: "Trade effluent charges 2024/25", NI Water, 2024, table: reception 0.3093, volumetric 0.3488, biological 0.2308, sludge
// 0.2693 GBP/m3 at a standard strength of COD 260 mg/l and suspended solids 240 mg/l. The charge at COD 800 and solids 300 is derived
// by the scaling of that table: 0.6581 + 0.2308 x 800/260 + 0.2693 x 300/240 = 1.7049 (printed nowhere).
describe('a trade effluent charge of reception, volume, oxygen demand and solids', () => {
  // The mill sends 10 m3/t. Feed that is 2 % dissolved matter gives 0.02/0.98 bdt/t of it; at 0.392 or 0.1274 kg COD per kg that is
  // 8 or 2.6 kg COD per tonne, which is 800 or 260 mg/l. The model charges no solids by themselves: at a fixed strength
  // they are a charge by volume, and what the mill pays per kg of oxygen demand is 0.2308/0.260.
  const chargedAt = (demandPerOrganic: string, solids: number): number => {
    const perVolume = 0.3093 + 0.3488 + (0.2693 * solids) / 240;
    const mill = evaluated(
      smallCase({
        currency: 'GBP',
        stages: [{ id: 'slush', like: 'pumps' }],
        figures: {
          'material.paper.dissolved': '2 %',
          'mill.effluent': '10 m3/t',
          'effluent.demandPerOrganic': demandPerOrganic,
          'effluent.electricityPerVolume': '0 kWh/m3',
          'effluent.electricityPerLoad': '0 kWh/kgCOD',
          'price.effluent': `${perVolume.toFixed(10)} GBP/m3`,
          'price.oxygenDemand': `${(0.2308 / 0.26).toFixed(15)} GBP/kgCOD`,
        },
      }),
    );
    return mill.number('mill.cost.water') / 10;
  };

  test('is 1.1582 GBP/m3 at the standard strength', () => {
    expect(chargedAt('0.1274 kgCOD/kg', 240).toFixed(4)).toBe('1.1582');
  });

  test('is 1.7049 GBP/m3 at COD 800 and solids 300 mg/l', () => {
    expect(chargedAt('0.392 kgCOD/kg', 300).toFixed(4)).toBe('1.7049');
  });
});
