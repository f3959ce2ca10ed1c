import { describe, expect, test } from 'vitest';
import { evaluated } from '../../support/evaluation.ts';
import { smallCase } from '../../support/small-case.ts';

// A line of 90 % fibre and 10 % film that rejects all film and a tenth of the fibre: all figures invented, worked by hand.
// Feed 1/0.81 = 1.234568 bdt. Reject: 0.1/0.81 = 0.123457 of film and 0.09/0.81 = 0.111111 of fibre, 0.234568 bdt, 0.469136 wet-t at 50 %.
const landfilled = evaluated(
  smallCase({
    stages: [{ id: 'clean', like: 'pumps' }],
    destinations: [
      { id: 'landfill', label: 'Landfill', kind: 'landfill' },
      { id: 'boiler', label: 'Own boiler', kind: 'own boiler' },
    ],
    route: { heat: 'own boiler' },
    figures: {
      'material.paper.lights': '10 %',
      'mill.line.clean.removal.lights': '100 %',
      'mill.line.clean.removal.fibre': '10 %',
      'residue.coarse.dryness': '50 %',
      'residue.coarse.to.boiler': '0 %',
      'destination.landfill.haulage': '20 EUR/wet-t',
      'destination.landfill.gateFee': '30 EUR/wet-t',
      'destination.landfill.tax': '60 EUR/wet-t',
      'destination.landfill.distance': '60 km',
      'destination.boiler.haulage': '2 EUR/wet-t',
      'destination.boiler.gateFee': '6 EUR/wet-t',
      'destination.boiler.efficiency': '80 %',
      'heatingValue.fibre': '17 GJ/bdt',
      'heatingValue.lights': '36 GJ/bdt',
      'fossilCarbon.lights': '2.7 tCO2/bdt',
      'mill.loopHeat': '5 GJ/t',
      'price.fuel': '10 EUR/GJ',
      'boiler.efficiency': '90 %',
      'price.carbon': '70 EUR/tCO2e',
    },
  }),
);
const burned = landfilled.withChanges({ 'residue.coarse.to.boiler': '100' });
const moved = (id: string): number => burned.number(id) - landfilled.number(id);

describe('a reject moved from landfill to the own boiler', () => {
  test('moves its tonnes: 0.4691 wet and 0.2346 dry', () => {
    expect(landfilled.number('mill.residue.coarse.wet.landfill').toFixed(6)).toBe('0.469136');
    expect(burned.number('mill.residue.coarse.wet.landfill')).toBe(0);
    expect(burned.number('mill.residue.coarse.wet.boiler').toFixed(6)).toBe('0.469136');
    expect(moved('mill.residue.coarse.wet')).toBe(0);
    expect(moved('mill.residue.coarse.dry')).toBe(0);
  });

  test('brings 4.6082 GJ of heat, and saves 5.1203 GJ of fuel', () => {
    // Dry heat 0.111111 x 17 + 0.123457 x 36 = 6.333333; its 0.234568 m3 of water take 2.443 each: 5.760284 as fired, of which 80 %.
    expect(landfilled.number('mill.heat.fromResidues')).toBe(0);
    expect(burned.number('mill.heat.fromResidues').toFixed(4)).toBe('4.6082');
    expect(moved('mill.fuel').toFixed(4)).toBe((-4.608227 / 0.9).toFixed(4));
    expect(moved('mill.heat.total')).toBe(0);
  });

  test('costs 19.70 less to get rid of, 28.15 less in tax, and earns 51.20 of heat', () => {
    // 0.469136 x (50 - 8) = 19.7037; 0.469136 x 60 = 28.1481; 4.608227 x 10/0.9 = 51.2025.
    expect(moved('mill.cost.residues.coarse').toFixed(4)).toBe('-19.7037');
    expect(moved('mill.cost.residues.landfillTax').toFixed(4)).toBe('-28.1481');
    expect(moved('mill.cost.credits.energy').toFixed(4)).toBe('-51.2025');
    expect(moved('mill.cost.heat')).toBe(0);
  });

  test('pays 3.16 more for carbon, since film is fossil', () => {
    // Film 0.123457 x 2700 = 333.333 kg, fuel 5.120252 x 56.297 = 288.255 kg: 45.079 kg more at 70 per tonne.
    expect(moved('mill.cost.carbon').toFixed(4)).toBe('3.1555');
  });

  test('moves the whole cost by these four and nothing else', () => {
    const parts = ['residues.coarse', 'residues.landfillTax', 'credits.energy', 'carbon'];

    expect(moved('mill.cost.total')).toBeCloseTo(
      parts.reduce((sum, part) => sum + moved(`mill.cost.${part}`), 0),
      10,
    );
  });

  test('ends 410.67 kg of methane, as CO2e, and 2.67 kg of haulage', () => {
    // 0.111111 x 0.44 x 0.5 x 1 x 0.5 x 16/12 x 0.9 x 28 x 1000; 0.469136 x 60 km x 0.09502.
    expect(landfilled.number('mill.footprint.landfill').toFixed(3)).toBe('410.667');
    expect(burned.number('mill.footprint.landfill')).toBe(0);
    expect(landfilled.number('mill.footprint.wasteFreight').toFixed(4)).toBe('2.6746');
    expect(burned.number('mill.footprint.wasteFreight')).toBe(0);
  });

  test('emits 345.77 kg where it burns, and 335.86 kg less with the fuel and its supply', () => {
    // Film 333.333 and 0.469136 x 26.5 = 12.432 of methane and nitrous oxide; fuel 5.120252 x (56.297 + 9.2972).
    expect(moved('mill.footprint.burned').toFixed(3)).toBe('345.765');
    expect(moved('mill.footprint.fuel').toFixed(3)).toBe('-288.255');
    expect(moved('mill.footprint.fuelSupply').toFixed(3)).toBe('-47.604');
  });

  test('moves scope 1 by fire and fuel, scope 3 by landfill, haulage and supply, and scope 2 not at all', () => {
    expect(moved('mill.footprint.scope1')).toBeCloseTo(345.765432 - 288.254833, 3);
    expect(moved('mill.footprint.scope2')).toBe(0);
    expect(moved('mill.footprint.scope3')).toBeCloseTo(-410.666667 - 2.674637 - 47.604007, 3);
  });

  test('shows 177.08 kg more of biogenic CO2 beside, in no scope', () => {
    // Fibre 0.111111 x 0.44 x 44/12 x 1000 = 179.259 kg, less the 0.425 of the gas spared: 5.120252 x 0.425 = 2.176 kg.
    expect(moved('mill.footprint.biogenic').toFixed(2)).toBe('177.08');
  });

  test('goes half as far for half of it, in tonnes, heat, cost and carbon alike', () => {
    const half = landfilled.withChanges({ 'residue.coarse.to.boiler': '50' });

    for (const id of [
      'mill.residue.coarse.wet.boiler',
      'mill.heat.fromResidues',
      'mill.cost.residues',
      'mill.footprint.burned',
      'mill.footprint.landfill',
    ])
      expect(half.number(id)).toBeCloseTo((landfilled.number(id) + burned.number(id)) / 2, 10);
  });
});
