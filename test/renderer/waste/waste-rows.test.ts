import { describe, expect, it } from 'vitest';
import { carbonTotal, scopeRows } from '../../../renderer/screens/waste/carbon-rows.ts';
import { energyRows, energyTotal } from '../../../renderer/screens/waste/energy-rows.ts';
import { destinationRows, streamRows, totalRow, type MassRow } from '../../../renderer/screens/waste/mass-rows.ts';
import { carbonScale, energyScale, massScale } from '../../../renderer/screens/waste/scales.ts';
import { largestStream, streamOf, sumOfShares, wayShares } from '../../../renderer/screens/waste/way-shares.ts';
import { energyUnits } from '../../../renderer/session/waste-place.svelte.ts';
import { demonstrationFacing, demonstrationInputs } from './facing.ts';

const facing = demonstrationFacing();
const tonnes = 96_000;
const pages = ['base', 'with'] as const;
const sum = (figures: readonly number[]): number => figures.reduce((all, figure) => all + figure, 0);

describe.each(['tonne', 'year'] as const)('the rows of a %s', (per) => {
  const mass = massScale(per, tonnes);
  const carbon = carbonScale(per, tonnes);

  it.each([
    { by: 'stream', rows: streamRows(facing, mass) },
    { by: 'destination', rows: destinationRows(facing, mass) },
  ])('add up to the total shown, by $by, on both pages', ({ rows }) => {
    const total: MassRow = totalRow(facing, mass);
    for (const page of pages)
      for (const kind of ['wet', 'dry'] as const)
        expect(sum(rows.map((row) => row[page]?.[kind] ?? 0))).toBeCloseTo(total[page]?.[kind] ?? Number.NaN, 9);
  });

  it('add up from cause to scope and from scope to total', () => {
    const scopes = scopeRows(facing, carbon);
    for (const page of pages) {
      expect(sum(scopes.map((scope) => scope[page].amount))).toBeCloseTo(carbonTotal(facing[page], carbon).amount, 9);
      for (const scope of scopes)
        expect(sum(scope.causes.map((cause) => cause[page]?.amount ?? 0))).toBeCloseTo(scope[page].amount, 9);
    }
  });

  it.each(energyUnits)('add up in %s, electricity and heat apart', (unit) => {
    const scales = {
      power: energyScale('electricity', unit, per, tonnes),
      heat: energyScale('heat', unit, per, tonnes),
    };
    const total = energyTotal(facing, scales);
    for (const page of pages)
      for (const source of ['electricity', 'heat'] as const)
        expect(sum(energyRows(facing, scales).map((row) => row[page][source]))).toBeCloseTo(total[page][source], 9);
  });
});

describe('energy in another measure', () => {
  // 1 kWh is 3.6 MJ; 1 MMBtu is 1.05505585 GJ.
  it.each([
    { unit: 'GJ', electricity: 0.0036, heat: 1 },
    { unit: 'kWh', electricity: 1, heat: 277.777_78 },
    { unit: 'MWh', electricity: 0.001, heat: 0.277_777_78 },
    { unit: 'MMBtu', electricity: 0.003_412_14, heat: 0.947_817 },
  ] as const)('is the same energy in $unit', ({ unit, electricity, heat }) => {
    expect(energyScale('electricity', unit, 'tonne', tonnes).factor).toBeCloseTo(electricity, 6);
    expect(energyScale('heat', unit, 'tonne', tonnes).factor).toBeCloseTo(heat, 4);
  });

  it('is a million kilowatt-hours where a thousand kilowatt-hours a tonne meet 1000 tonnes', () => {
    const { factor, unit } = energyScale('electricity', 'kWh', 'year', 1000);

    expect([1000 * factor, unit]).toEqual([1, 'million kWh']);
  });
});

describe('the way of a stream', () => {
  it('opens at the largest, with its usual destination taking the rest', () => {
    expect(largestStream(facing)).toBe('primary');
    const coarse = streamOf(facing, 'coarse');
    if (coarse === null) throw new Error('No coarse rejects');
    const shares = wayShares(facing, coarse, demonstrationInputs());

    expect(shares.map(({ destination, share }) => [destination, share])).toEqual([
      ['incineration', 40],
      ['landfill', 0],
      ['spreading', 0],
      ['boiler', 60],
      ['scrap', 0],
    ]);
    expect(sumOfShares(shares)).toBe(100);
    expect(shares[0]?.input).toBeNull();
    expect(shares[1]?.input).toMatchObject({ id: 'residue.coarse.to.landfill', value: '0', touched: false });
  });

  it('never burns ash a second time', () => {
    const ash = streamOf(facing, 'ash');
    if (ash === null) throw new Error('No ash');

    expect(wayShares(facing, ash, demonstrationInputs()).map(({ destination }) => destination)).not.toContain('boiler');
  });
});
