import { describe, expect, test } from 'vitest';
import { contractPrice, creditLeft, loadFreight } from '../../../src/study/lots/lot-money.ts';

describe('a contract price', () => {
  const terms = { index: 140, slope: 0.9, constant: 5, floor: 100, cap: 150, rebate: 4 };

  // 0.9 x 140 + 5 = 131, less 4. At 100: 95, so the floor, less 4. At 200: 185, so the cap, less 4. By hand.
  test.each([
    [140, 127],
    [100, 96],
    [200, 146],
  ])('at an index of %f is %f', (index, expected) => {
    expect(contractPrice({ ...terms, index })).toBeCloseTo(expected, 12);
  });

  test('is the floor where floor and cap contradict each other, as the formula says', () => {
    expect(contractPrice({ ...terms, floor: 160 })).toBe(156);
  });
});

describe('freight by the load', () => {
  // 620 a load of which a load back bears 15 %: 527. 90 m3 x 0.42 t/m3 = 37.8 t, so that the payload of 25 t binds: 21.08. By hand.
  test('is shared by the payload where that binds', () => {
    expect(loadFreight({ money: 620, backhaul: 0.15, payload: 25, volume: 90, density: 0.42 })).toBeCloseTo(21.08, 12);
  });

  // Loose bales of 0.2 t/m3: 18 t, 527/18 = 29.2778.
  test('is shared by what the volume holds where bales are loose', () => {
    expect(loadFreight({ money: 620, backhaul: 0.15, payload: 25, volume: 90, density: 0.2 })).toBeCloseTo(
      29.277778,
      6,
    );
  });
});

// 120 x 6 % x 60/365 = 1.183562; 120 - 1.183562 = 118.816438. By hand.
test('120 that is paid after 60 days at 6 % a year is worth 118.8164', () => {
  expect(120 * creditLeft(0.06, 60)).toBeCloseTo(118.816438, 6);
});
