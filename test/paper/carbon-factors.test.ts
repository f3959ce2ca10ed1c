import { describe, expect, it } from 'vitest';
import { parseUnit } from '../../src/kernel/units/unit.ts';
import { type CarbonFigure, carbonFactor, carbonFactors } from '../../src/paper/carbon-factors.ts';
import { materialEntries } from '../../src/paper/catalogue.ts';
import sourceRows from '../../src/paper/defaults/sources.json' with { type: 'json' };
import { provenanceOf } from '../../src/paper/figure.ts';

const sources = new Map<string, { readonly status: string; readonly year?: string }>(Object.entries(sourceRows));
const boundaries = [
  'use of fuel',
  'fuel upstream',
  'generation of electricity',
  'losses and upstream of electricity',
  'cradle to gate',
  'collection and sorting',
  'transport only',
  'treatment',
  'global warming potential',
  'decay',
];

/** Keys of the factors that break a rule: a test says none. */
function breaking(keeps: (figure: CarbonFigure, key: string) => boolean): string[] {
  return [...carbonFactors].filter(([key, figure]) => !keeps(figure, key)).map(([key]) => key);
}

describe('every carbon factor', () => {
  it('is written in plain digits, with its value between low and high', () => {
    expect(carbonFactors.size).toBeGreaterThan(60);
    expect(
      breaking(({ value, low, high }) => [value, low, high].every((digits) => /^\d+(\.\d+)?$/.test(digits))),
    ).toEqual([]);
    expect(breaking(({ value, low, high }) => Number(low) <= Number(value) && Number(value) <= Number(high))).toEqual(
      [],
    );
  });

  it('has a unit, written as the program writes it', () => {
    expect(breaking(({ unit }) => parseUnit(unit).text === unit)).toEqual([]);
  });

  it('says what it takes in and how', () => {
    expect(
      breaking(
        ({ label, boundary, biogenic, allocation, gwp }) =>
          label.length > 3 &&
          boundaries.includes(boundary) &&
          ['in', 'out', 'apart'].includes(biogenic) &&
          ['none', 'cut-off', 'closed loop', 'substitution'].includes(allocation) &&
          ['AR4', 'AR5', 'AR6', 'none'].includes(gwp),
      ),
    ).toEqual([]);
  });

  it('has nothing else', () => {
    const known = 'label value low high unit source status note year boundary biogenic allocation gwp verify'.split(
      ' ',
    );

    expect(breaking((figure) => Object.keys(figure).every((key) => known.includes(key)))).toEqual([]);
  });

  it('was read or remembered only where its row was, and is common practice or a definition where it has none', () => {
    expect(
      breaking(({ source, status }) => {
        if (source === 'practice') return ['practice', 'definition'].includes(status);
        return sources.get(source)?.status === (status === 'derived' ? 'read' : status);
      }),
    ).toEqual([]);
  });

  it('names the year of its row, and no year without one', () => {
    expect(
      breaking(({ source, year }) =>
        source === 'practice' ? year === '' : year !== '' && (sources.get(source)?.year ?? '').includes(year),
      ).filter((key) => !/^gwp\./.test(key)),
    ).toEqual([]);
    expect(['ar4', 'ar5', 'ar6'].map((set) => carbonFactor(`gwp.${set}.methane`).year)).toEqual([
      '2007',
      '2014',
      '2021',
    ]);
  });

  it('that comes from memory says what to look up', () => {
    expect(breaking(({ status, verify }) => status !== 'memory' || (verify ?? '').length > 10)).toEqual([]);
  });

  it('has a note, if it has one, that is a short phrase', () => {
    expect(breaking(({ note = 'none' }) => note.length <= 130 && !/[.!?]$|[.!?] [A-Z]/.test(note))).toEqual([]);
  });

  it('tells its source in words', () => {
    for (const figure of carbonFactors.values())
      expect(provenanceOf(figure).source).toMatch(/^Common practice|.{20,}\d{4}|Clean/);
  });

  it('of fuels comes as use, biogenic and upstream, per net gigajoule', () => {
    const fuels = 'natural-gas heavy-fuel-oil gas-oil lpg coal wood-chips biogas'.split(' ');
    for (const fuel of fuels)
      for (const part of ['use', 'biogenic', 'upstream'])
        expect(carbonFactor(`fuel.${fuel}.${part}`).unit).toBe('kgCO2e/GJ');
    expect(breaking((_, key) => !key.startsWith('fuel.')).length).toBe(3 * fuels.length);
  });

  it('of a pulp is the one of the list of materials', () => {
    const virgin = [...materialEntries].filter(([, { origin }]) => origin === 'virgin').map(([id]) => id);
    const mirrored = [...carbonFactors.keys()].filter((key) => key.startsWith('pulp.'));

    expect(mirrored).toEqual(virgin.map((id) => `pulp.${id}`));
    for (const id of virgin) expect(carbonFactor(`pulp.${id}`)).toMatchObject(materialCarbon(id));
  });

  it('that must not be used is marked by its boundary or its allocation', () => {
    const refused = [...carbonFactors].filter(([key]) => key.startsWith('refused.'));

    expect(refused.length).toBe(3);
    for (const [, { boundary, allocation }] of refused)
      expect(boundary === 'transport only' || allocation === 'closed loop').toBe(true);
  });

  it('that is asked for by a wrong name stops the program', () => {
    expect(() => carbonFactor('fuel.peat.use')).toThrow('No carbon factor "fuel.peat.use"');
  });
});

function materialCarbon(id: string): object {
  const { carbon } = materialEntries.get(id) as unknown as { readonly carbon: object };
  return carbon;
}
