import { describe, expect, test } from 'vitest';
import { carbonFactor } from '../../../src/paper/carbon-factors.ts';
import { givenFigure } from '../../../src/paper/entry.ts';

const use = (fuel: string): number => Number(carbonFactor(`fuel.${fuel}.use`).value);

// Source: "UK Government GHG Conversion Factors for Company Reporting 2023", DESNZ, fuels, kWh gross and kWh net. The ratio of gross to net
// is 1.108 for natural gas, 1.064 for the oils and 1.053 for coal.
test.each([
  { fuel: 'natural-gas', gross: 0.18293, ratio: 1.108 },
  { fuel: 'heavy-fuel-oil', gross: 0.26813, ratio: 1.064 },
  { fuel: 'gas-oil', gross: 0.2565, ratio: 1.064 },
  { fuel: 'coal', gross: 0.32262, ratio: 1.053 },
])('$fuel: the gross figure of the same set, brought to net energy, is the same carbon', ({ fuel, gross, ratio }) => {
  expect(Math.abs((gross * ratio * 1000) / 3.6 / use(fuel) - 1)).toBeLessThan(0.001);
});

// Source: default CO2 of "2006 IPCC Guidelines", volume 2, table 2.3, kg/GJ net (from memory; gas oil and coal also seen cited).
test.each([
  { fuel: 'natural-gas', co2: 56.1, within: 0.005 },
  { fuel: 'heavy-fuel-oil', co2: 77.4, within: 0.03 },
  { fuel: 'gas-oil', co2: 74.1, within: 0.03 },
  { fuel: 'lpg', co2: 63.1, within: 0.02 },
  { fuel: 'coal', co2: 94.6, within: 0.005 },
])('$fuel emits about the $co2 kg/GJ of the international default', ({ fuel, co2, within }) => {
  const { low, high } = carbonFactor(`fuel.${fuel}.use`);

  expect(Math.abs(use(fuel) / co2 - 1)).toBeLessThan(within);
  expect(Number(low) <= co2 && co2 <= Number(high)).toBe(true);
});

// Source: 40 CFR part 98, table C-1, US EPA: kg CO2 per million Btu gross. 1 million Btu is 1.055056 GJ.
test.each([
  { fuel: 'natural-gas', perBtu: 53.06, ratio: 1.108, within: 0.015 },
  { fuel: 'heavy-fuel-oil', perBtu: 75.1, ratio: 1.064, within: 0.05 },
  { fuel: 'gas-oil', perBtu: 73.96, ratio: 1.064, within: 0.02 },
  { fuel: 'coal', perBtu: 93.28, ratio: 1.053, within: 0.015 },
])('$fuel emits about the $perBtu kg per million Btu of the US rule', ({ fuel, perBtu, ratio, within }) => {
  expect(Math.abs(((perBtu / 1.055056) * ratio) / use(fuel) - 1)).toBeLessThan(within);
});

describe('gas burned, by hand', () => {
  test('a gross megawatt-hour of gas is 0.9025 net, 3.249 GJ, and 182.9 kg of CO2e', () => {
    const net = 3.6 / 1.108;

    expect(net.toFixed(3)).toBe('3.249');
    expect((net * use('natural-gas')).toFixed(1)).toBe('182.9');
  });

  test('confounding gross and net costs 11 %: never a net factor on gross energy', () => {
    expect((3.6 * use('natural-gas')).toFixed(1)).toBe('202.7');
  });
});

describe('energy of one kind in another unit', () => {
  const energy = (given: string, unit: string): string => {
    const found = givenFigure(
      { id: 'energy', label: 'Energy', unit: 'kgCO2e/GJ', allowed: {} },
      { value: given, unit, status: 'read', source: 'typed' },
    );
    return found.ok ? found.value.value : 'refused';
  };

  // A factor of 53.06 kg per million Btu is 50.29 kg/GJ, both gross.
  test('53.06 kg per million Btu is 50.29 kg/GJ', () => {
    expect(Number(energy('53.06', 'kgCO2e/MMBtu')).toFixed(2)).toBe('50.29');
  });

  test('0.0561 kg per MJ is 56.1 kg/GJ', () => {
    expect(energy('0.0561', 'kgCO2e/MJ')).toBe('56.1');
  });

  test('a factor per kWh is not taken for one per GJ', () => {
    expect(energy('0.2', 'kgCO2e/kWh')).toBe('refused');
  });
});

// Cellulose, C6H10O5: 72 of 162 parts are carbon; 44/12 of CO2 each.
test('burned fibre gives off 1.63 tonnes of biogenic CO2 per dry tonne', () => {
  expect(((72 / 162) * (44 / 12)).toFixed(2)).toBe(carbonFactor('burning.fibre.biogenic').value);
});

// Source: "2006 IPCC Guidelines", volume 2, table 2.5 (from memory): wood 30 kg CH4 and 4 kg N2O per TJ net.
test('wood burned emits methane and nitrous oxide of the size of the international default', () => {
  const byHand = (30 * Number(carbonFactor('gwp.ar5.methane').value) + 4 * 265) / 1000;

  expect(byHand.toFixed(1)).toBe('1.9');
  expect(Number(carbonFactor('fuel.wood-chips.use').low)).toBeLessThan(byHand);
  expect(Number(carbonFactor('fuel.wood-chips.use').high)).toBeGreaterThan(byHand);
});
