import { describe, expect, it } from 'vitest';
import { gridIntensities } from '../../build/grid-intensities.mjs';
import { gridAttribution, gridFactor, gridRegions, marginalGridFactor } from '../../src/paper/carbon-factors.ts';
import gridTable from '../../src/paper/defaults/grid-intensities.json' with { type: 'json' };
import sourceRows from '../../src/paper/defaults/sources.json' with { type: 'json' };

describe('grid intensities', () => {
  it('are those of the package in use', () => {
    expect(gridIntensities()).toEqual(gridTable);
  });

  it('have a name, plain digits and a year that is known or empty', () => {
    const rows = [...Object.values(gridTable.average), ...Object.values(gridTable.marginal)];

    expect(rows.filter(({ name }) => !/^\p{L}/u.test(name) || /^\p{Lu}{6}/u.test(name))).toEqual([]);
    expect(rows.filter(({ value }) => !/^\d(\.\d+)?$/.test(value) || Number(value) > 2)).toEqual([]);
    expect(rows.filter(({ year }) => !['', '2021', '2023', '2024'].includes(year))).toEqual([]);
  });

  it('come as factors with a range of a fifth either way', () => {
    const factor = gridFactor('EU');

    expect(factor).toMatchObject({ value: '0.21302', low: '0.170416', high: '0.255624', year: '2024' });
    expect(factor).toMatchObject({ unit: 'kgCO2e/kWh', boundary: 'generation of electricity', status: 'read' });
    expect(Object.hasOwn(sourceRows, factor?.source ?? '')).toBe(true);
    expect(Object.hasOwn(sourceRows, marginalGridFactor('DEU')?.source ?? '')).toBe(true);
  });

  it('say when the year is not known', () => {
    expect(gridFactor('CHE')).toMatchObject({ year: '', note: 'year not known, 2024 at the latest' });
  });

  it('are nothing for a region that has none, whatever its name', () => {
    for (const region of ['', 'gbr', 'constructor', '__proto__', 'toString']) {
      expect(gridFactor(region)).toBeUndefined();
      expect(marginalGridFactor(region)).toBeUndefined();
    }
    expect(marginalGridFactor('EU')).toBeUndefined();
  });

  it('are listed by name, each once', () => {
    const regions = gridRegions();
    const names = regions.map(({ name }) => name);

    expect(regions.length).toBe(222);
    expect(new Set(names).size).toBe(222);
    expect(names).toEqual([...names].sort());
    for (const { key, name } of regions) expect(gridFactor(key)?.label).toBe(`Grid electricity, average, ${name}`);
  });

  it('name those they are owed to, and the licence', () => {
    expect(gridAttribution).toMatch(/Ember.*Green Web Foundation.*does not say which year.*0\.19\.0.*CC BY-SA 4\.0/);
  });
});
