import { describe, expect, test } from 'vitest';
import { evaluated } from '../support/evaluation.ts';
import { smallCase } from '../support/small-case.ts';

// Source: worked by hand. The train takes out all ash; grade A is 32 % ash and grade B 20 %, so that alone they yield 0.68 and 0.80.
// 0.6 x 0.68 + 0.4 x 0.80 = 0.728.
describe('a recipe of 60 % of a grade that yields 0.68 and 40 % of one that yields 0.80', () => {
  const mill = evaluated(
    smallCase({
      stages: [{ id: 'wash', like: 'pumps' }],
      materials: [
        { id: 'grade-a', label: 'Grade A' },
        { id: 'grade-b', label: 'Grade B' },
      ],
      figures: {
        'material.grade-a.ash': '32 %',
        'material.grade-b.ash': '20 %',
        'material.grade-a.price': '120 EUR/t-ar',
        'material.grade-b.price': '180 EUR/t-ar',
        'material.grade-b.moisture': '8 %',
        'mill.line.grade.grade-b.share': '40 %',
        'other.line.grade.grade-b.share': '40 %',
        'mill.line.wash.removal.ash': '100 %',
      },
    }),
  );

  test('yields 0.728', () => {
    expect(mill.number('mill.line.yield')).toBeCloseTo(0.728, 14);
  });

  test('gives the first grade what the other leaves', () => {
    expect(mill.number('mill.line.grade.grade-a.share')).toBeCloseTo(0.6, 15);
  });

  test('buys 0.6/0.728 and 0.4/0.728 bone-dry tonnes for a tonne of stock', () => {
    expect(mill.number('mill.bought.grade-a')).toBeCloseTo(0.6 / 0.728, 13);
    expect(mill.number('mill.bought.grade-b')).toBeCloseTo(0.4 / 0.728, 13);
  });

  test('pays for each as received at its own moisture', () => {
    // 0.6/0.728/0.90 x 120 = 109.8901; 0.4/0.728/0.92 x 180 = 107.5012.
    expect(mill.number('mill.cost.fibre.grade-a').toFixed(4)).toBe('109.8901');
    expect(mill.number('mill.cost.fibre.grade-b').toFixed(4)).toBe('107.5012');
  });
});
