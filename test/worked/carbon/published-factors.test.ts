import { describe, expect, test } from 'vitest';
import { carbonFactor } from '../../../src/paper/carbon-factors.ts';

const value = (key: string): number => Number(carbonFactor(key).value);

// Source: global warming potentials over 100 years of the fourth, fifth and sixth assessment report, IPCC 2007, 2014, 2021, as collected in
// "globalwarmingpotentials", openclimatedata, 2026; the sixth report's 27.0 for methane that is not fossil from memory of its table 7.15.
test.each([
  { set: 'ar4', methane: 25, nitrousOxide: 298 },
  { set: 'ar5', methane: 28, nitrousOxide: 265 },
  { set: 'ar6', methane: 27, nitrousOxide: 273 },
])('$set: methane $methane, nitrous oxide $nitrousOxide', ({ set, methane, nitrousOxide }) => {
  expect(value(`gwp.${set}.methane`)).toBe(methane);
  expect(value(`gwp.${set}.nitrous-oxide`)).toBe(nitrousOxide);
  expect(carbonFactor(`gwp.${set}.methane`).gwp).toBe(set.toUpperCase());
});

test('the sixth report tells methane apart: 27.0 where not fossil, 27.9 all together', () => {
  expect(value('gwp.ar6.methane-all')).toBe(27.9);
  expect(value('gwp.ar6.methane')).toBeLessThan(value('gwp.ar6.methane-all'));
});

// Source: "UK Government GHG Conversion Factors for Company Reporting 2023", DESNZ: LPG, CH4 2.5536 kg CO2e per tonne; 28 times a round
// 0.0912 kg, where 25 would make it 0.102144. The set reckons by the fifth report.
test('the British set of 2023 reckons methane at 28', () => {
  expect((2.5536 / value('gwp.ar5.methane')).toFixed(10)).toBe('0.0912000000');
  expect(carbonFactor('fuel.lpg.use').gwp).toBe('AR5');
});

// Source: "UK Government GHG Conversion Factors for Company Reporting 2025", DESNZ, freighting goods and its well-to-tank part.
describe('freight, by hand', () => {
  test('24 t over 250 km by road are 570 kg: 462 from the exhaust and 108 before the tank', () => {
    expect(24 * 250 * value('freight.road')).toBeCloseTo(24 * 250 * 0.07703 + 24 * 250 * 0.01799, 9);
    expect((24 * 250 * value('freight.road')).toFixed(0)).toBe('570');
  });

  test('rail takes 37 % and a container ship 21 % of the road', () => {
    expect((value('freight.rail') / value('freight.road')).toFixed(2)).toBe('0.37');
    expect((value('freight.sea') / value('freight.road')).toFixed(2)).toBe('0.21');
  });

  test('a full lorry is the low end: 0.05988 and 0.01403', () => {
    expect((0.05988 + 0.01403).toFixed(5)).toBe(carbonFactor('freight.road').low);
  });

  test('a bulk carrier is the low end at sea: 0.00353 and 0.0008', () => {
    expect((0.00353 + 0.0008).toFixed(5)).toBe(carbonFactor('freight.sea').low);
  });
});

// Source: "Emission Factors Hub", US EPA, edition of 2021-22: corrugated recycled 0.11 and mixed paper 0.07 tCO2e per short ton.
test('collecting and sorting lies between haulage alone and the American figure with sorting: 121 and 77 kg/t', () => {
  expect(value('collection.us-corrugated').toFixed(0)).toBe('121');
  expect(value('collection.us-mixed').toFixed(0)).toBe('77');
  expect(value('collection')).toBeGreaterThan(value('refused.recycling-haulage'));
  expect(value('collection')).toBeLessThan(value('collection.us-corrugated'));
});

// Source: "UK Government GHG Conversion Factors for Company Reporting 2025", DESNZ, material use and waste disposal, paper.
describe('published figures whose boundary fits nothing here', () => {
  test('board from a closed loop is 8.5 % below board from wood, and holds a whole mill: 18 times collection', () => {
    expect((100 * (1 - value('refused.closed-loop-board') / 1199.72542)).toFixed(1)).toBe('8.5');
    expect((value('refused.closed-loop-board') / value('collection')).toFixed(0)).toBe('18');
    expect(carbonFactor('refused.closed-loop-board').boundary).not.toBe(carbonFactor('collection').boundary);
  });

  test('haulage to the recycler and to the fire is one and the same 4.68568 kg, which says nothing of the treatment', () => {
    expect(value('refused.incineration-haulage')).toBe(4.68568);
    expect(value('refused.recycling-haulage')).toBe(4.68568);
    expect(carbonFactor('refused.incineration-haulage').boundary).toBe('transport only');
    expect(carbonFactor('treatment.incineration-ch4-n2o').boundary).toBe('treatment');
  });
});

// Source: "2006 IPCC Guidelines", volume 5, table 4.1, as copied by a public site: N2O 0.06 to 0.6 and CH4 0.03 to 8 g per kg of wet waste.
test('composting a wet tonne is 17 to 383 kg by the range of the guidelines', () => {
  const { low, high } = carbonFactor('treatment.composting');

  expect((0.03 * 28 + 0.06 * 265).toFixed(2)).toBe(low);
  expect((8 * 28 + 0.6 * 265).toFixed(0)).toBe(high);
});

// Source: heat and steam 0.17965 kgCO2e/kWh, the same set of 2023. By hand: 2.35 GJ to the tonne of steam (common practice, no source).
test('a tonne of bought low-pressure steam is 0.12 t of CO2e', () => {
  expect(((2.35 * value('heat.bought')) / 1000).toFixed(2)).toBe('0.12');
});
