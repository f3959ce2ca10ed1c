import { describe, expect, test } from 'vitest';
import { gridIntensities } from '../../../build/grid-intensities.mjs';
import { carbonFactor, gridFactor, marginalGridFactor } from '../../../src/paper/carbon-factors.ts';

const average = (region: string): number => Number(gridFactor(region)?.value);
const marginal = (region: string): number => Number(marginalGridFactor(region)?.value);

// Source: "@tgwf/co2" 0.19.0, averageIntensity (Ember), read in the package: kgCO2e/kWh of 2024 (215.79 g and so on). Whoever takes a new version of the package
// sees here that results will change, sets the years in the generator anew and writes the new figures down.
describe('the grid intensities that results rest on', () => {
  test.each([
    { region: 'GBR', kilograms: '0.21579' },
    { region: 'DEU', kilograms: '0.34206' },
    { region: 'FRA', kilograms: '0.04418' },
    { region: 'FIN', kilograms: '0.07225' },
    { region: 'USA', kilograms: '0.38355' },
    { region: 'EU', kilograms: '0.21302' },
  ])('are unchanged for $region: $kilograms kg/kWh', ({ region, kilograms }) => {
    const inPackage = new Map(Object.entries(gridIntensities().average)).get(region);

    expect(inPackage?.value).toBe(kilograms);
    expect(gridFactor(region)?.value).toBe(kilograms);
    expect(gridFactor(region)?.year).toBe('2024');
  });

  // Source: the same package, marginalIntensity (UNFCCC, default grid factors 2021).
  test.each([
    { region: 'GBR', kilograms: '0.38' },
    { region: 'DEU', kilograms: '0.65' },
    { region: 'FRA', kilograms: '0.158' },
    { region: 'FIN', kilograms: '0.267' },
  ])('are unchanged at the margin for $region: $kilograms kg/kWh', ({ region, kilograms }) => {
    expect(marginalGridFactor(region)?.value).toBe(kilograms);
    expect(marginalGridFactor(region)?.year).toBe('2021');
  });
});

test('600 kWh from the grid are 128 kg in the European Union and 27 kg in France', () => {
  expect((600 * average('EU')).toFixed(0)).toBe('128');
  expect((600 * average('FRA')).toFixed(0)).toBe('27');
});

test('the margin is up to four times the average: 3.6 in France, 3.7 in Finland', () => {
  expect((marginal('FRA') / average('FRA')).toFixed(1)).toBe('3.6');
  expect((marginal('FIN') / average('FIN')).toFixed(1)).toBe('3.7');
});

// Source: eGRID of 2022, US EPA, as held in a third party's model: 823.15 lb CO2 per MWh; 1 lb is 0.45359237 kg.
test('the American average is of the size that its own agency gives: 373.4 g/kWh', () => {
  const byAgency = (823.15 * 0.45359237) / 1000;

  expect((1000 * byAgency).toFixed(1)).toBe('373.4');
  expect(Math.abs(average('USA') / byAgency - 1)).toBeLessThan(0.05);
});

// Source: "UK Government GHG Conversion Factors for Company Reporting 2023", DESNZ: 0.20707 kgCO2e/kWh generated, without supply of the fuels.
test('the British average lies above the official figure, which leaves the supply of the fuels out, and below the sum of both', () => {
  const supply = Number(carbonFactor('electricity.fuels.gbr').value);

  expect(average('GBR')).toBeGreaterThan(0.20707);
  expect(average('GBR')).toBeLessThan(0.20707 + supply);
});

test('losses and supply together are no more than what the British set of 2025 adds', () => {
  const [losses, fuels, both] = ['electricity.losses.gbr', 'electricity.fuels.gbr', 'electricity.upstream'].map((key) =>
    carbonFactor(key),
  );

  expect((Number(losses?.value) + Number(fuels?.value)).toFixed(5)).toBe(both?.high);
});
