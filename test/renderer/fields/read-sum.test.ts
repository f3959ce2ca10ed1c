import { describe, expect, it } from 'vitest';
import { readSum } from '../../../renderer/fields/read-sum.ts';

describe('arithmetic typed into a slot', () => {
  it.each([
    ['68+4.50', '72.50'],
    ['0.1+0.2', '0.3'],
    ['100 - 12.5', '87.5'],
    ['2 + 3 × 4', '14'],
    ['2*3*4-1', '23'],
    ['1/8', '0.125'],
    ['10 ÷ 4 + 1', '3.5'],
    ['1/3', '0.33333333333333333333'],
    ['-5 + 3', '-2'],
    ['0.5-1', '-0.5'],
  ])('%s comes to %s', (text, digits) => {
    expect(readSum(text, '.')).toEqual({ digits, rest: '' });
  });

  it('leaves the unit behind it to be read', () => {
    expect(readSum('68 + 4,5 €/kWh', ',')).toEqual({ digits: '72.5', rest: ' €/kWh' });
  });

  it.each(['472', '0.12 €/kWh', '-5', '4 hpd/t', '1/0', '1,234+5'])(
    'is not found, or not worked out, in "%s"',
    (text) => {
      expect(readSum(text, '.')).toBeNull();
    },
  );
});
