import { describe, expect, it } from 'vitest';
import { leaveCells } from '../../../renderer/screens/waste/leave-cells.ts';
import { readWasteCode } from '../../../renderer/screens/waste/read-waste-code.ts';
import { demonstrationFacing } from './facing.ts';

describe('a waste code that somebody types', () => {
  it.each([
    ['030310', '03 03 10'],
    [' 03-03-10 * ', '03 03 10*'],
    ['10 01 15', '10 01 15'],
    ['10.01.14*', '10 01 14*'],
  ])('%s is read as %s', (typed, code) => {
    expect(readWasteCode(typed)).toBe(code);
  });

  it.each(['0303', 'sludge', '03 03 107'])('%s is left for the engine to refuse', (typed) => {
    expect(readWasteCode(typed)).toBe(typed);
  });
});

describe('what leaves, as cells', () => {
  const cells = leaveCells(demonstrationFacing(), { factor: 1000, decimals: 2, unit: 'kg' }, 'a tonne');

  it('has a column of waste codes', () => {
    expect(cells[0]).toEqual(['stream', 'route', 'waste code', 'to', 'dry, kg a tonne', 'wet, kg a tonne']);
    const codes = new Map(cells.slice(1).map(([stream, route, code]) => [`${String(stream)}, ${String(route)}`, code]));
    expect(codes.get('Rope tail and bale wire, Recovered middle ply')).toBe('03 03 07');
    expect(codes.get('Cleaner rejects, Virgin middle ply')).toBe('03 03 10');
    expect(codes.get('Boiler ash, Recovered middle ply')).toBe('to be classified');
  });

  it('adds up to all that leaves', () => {
    const { with: other } = demonstrationFacing();
    const wet = cells.filter(([, route]) => route === other.label).reduce((sum, row) => sum + Number(row[5]), 0);

    expect(wet).toBeCloseTo(other.waste.wet * 1000, 6);
  });
});
