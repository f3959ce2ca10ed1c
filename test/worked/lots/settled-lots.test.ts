import { describe, expect, test } from 'vitest';
import { openDemonstration } from '../../study/lots/open-demonstration.ts';
import { lotOf, pricedFor } from '../../study/lots/sample-lots.ts';

const open = openDemonstration();
const settled = (more: Parameters<typeof lotOf>[1]) => pricedFor(open, [lotOf('lot', more)])[0]!.settled;

describe('a delivery wetter than agreed', () => {
  const wet = (settlement: 'dry basis' | 'point for point') =>
    settled({ settlement, moisture: ['14'], figures: { tonnes: '20', moistureLimit: '10', moistureTolerance: '0' } });

  // Dry basis 20 x 0.86/0.90 = 19.1111; point for point 20 x 0.96 = 19.2. Common practice of the trade, no source; worked by hand.
  test('of 20 t at 14 % is paid for 19.1111 t on the dry basis and 19.2 t point for point', () => {
    expect(wet('dry basis').payable.toFixed(4)).toBe('19.1111');
    expect(wet('point for point').payable.toFixed(4)).toBe('19.2000');
    expect(wet('dry basis').moistureClaim).toBeCloseTo((20 - 19.111111) * 120, 4);
  });

  test('within the tolerance is paid for in full', () => {
    const { payable, moistureClaim } = settled({
      moisture: ['10.4'],
      figures: { tonnes: '20', moistureLimit: '10', moistureTolerance: '0.5' },
    });

    expect([payable, moistureClaim]).toEqual([20, 0]);
  });
});

describe('an invoice by the air-dry tonne', () => {
  // Air-dry mass = gross x (1 - water)/0.90: 24.000 t at 14 % water are 22.933333 air-dry tonnes, 4.4444 % less. An air-dry tonne is 90 % dry:
  // trade definition of air-dry market pulp, common practice; ISO 801 for saleable mass. Worked by hand.
  test('charges 22.933333 t of 24.000 t at 14 % water', () => {
    const { payable, moistureClaim } = settled({ basis: 'air-dry', moisture: ['14'], figures: { tonnes: '24' } });

    expect(payable.toFixed(6)).toBe('22.933333');
    expect(((1 - payable / 24) * 100).toFixed(4)).toBe('4.4444');
    expect(moistureClaim).toBe(0);
  });

  // Bone-dry: 24 x 0.86 = 20.64.
  test('by the bone-dry tonne charges 20.64 t', () => {
    expect(settled({ basis: 'bone-dry', moisture: ['14'], figures: { tonnes: '24' } }).payable.toFixed(4)).toBe(
      '20.6400',
    );
  });
});
