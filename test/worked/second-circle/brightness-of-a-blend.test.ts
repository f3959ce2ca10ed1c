import { describe, expect, test } from 'vitest';
import { openCase } from '../../../src/study/open-case.ts';
import { writeCase } from '../../../src/case/write-case.ts';
import { cautionsOf } from '../../../src/study/warnings.ts';
import { cautionSentence } from '../../../src/wording/caution-sentence.ts';
import { type Evaluation, evaluated } from '../../support/evaluation.ts';
import { twoLineCase } from './two-line-case.ts';

/** Two lines, the first with a share of the dry fresh stock, each with a brightness. */
function blend(share: string, first: string, second: string): Evaluation {
  return evaluated(twoLineCase(share, { 'mill.one.brightness': first, 'mill.two.brightness': second }));
}

// Kubelka and Munk: K/S = (1 - R)^2 / (2 R), from memory; worked by hand.
describe('the brightness of a blend', () => {
  test('of equal parts of 87 and 60 % is 68.7 %, not the 73.5 % of the mean', () => {
    // K/S: 0.13^2 / 1.74 = 0.0097126; 0.40^2 / 1.20 = 0.1333333; half of both 0.0715230.
    // R = 1.0715230 - sqrt(0.0715230^2 + 2 x 0.0715230) = 1.0715230 - 0.3849180 = 0.6866050.
    const mill = blend('50 %', '87 %', '60 %');

    expect(mill.number('mill.one.absorption')).toBeCloseTo(0.0097126, 7);
    expect(mill.number('mill.two.absorption')).toBeCloseTo(0.1333333, 7);
    expect(mill.number('mill.quality.absorption')).toBeCloseTo(0.071523, 6);
    expect(mill.number('mill.product.brightness') * 100).toBeCloseTo(68.66, 2);
    expect((mill.number('mill.product.brightness') * 100).toFixed(1)).toBe('68.7');
  });

  test('of three parts of 87 to one of 60 % is 75.3 %', () => {
    // K/S = 0.75 x 0.0097126 + 0.25 x 0.1333333 = 0.0406178; root of 0.0016498 + 0.0812356 = 0.2878983; R = 0.7527195.
    expect(blend('75 %', '87 %', '60 %').number('mill.product.brightness') * 100).toBeCloseTo(75.27, 2);
  });

  test('of one stock alone is its own', () => {
    expect(blend('100 %', '87 %', '60 %').number('mill.product.brightness')).toBeCloseTo(0.87, 12);
    expect(blend('0 %', '87 %', '60 %').number('mill.product.brightness')).toBeCloseTo(0.6, 12);
  });

  test('of two stocks that reflect everything is 100 %', () => {
    expect(blend('30 %', '100 %', '100 %').number('mill.product.brightness')).toBe(1);
  });
});

describe('a limit of brightness', () => {
  const warningsOf = (limit: string): readonly string[] => {
    const figures = { 'mill.one.brightness': '87 %', 'mill.two.brightness': '60 %', 'mill.limit.brightness': limit };
    const open = openCase(writeCase(twoLineCase('50 %', figures)));
    return open.ok ? cautionsOf(open.value).map(cautionSentence) : [];
  };
  const sentence = 'Mill: brightness of the stock comes to 68.7 %; the limit set is 70.';

  test('warns where the blend falls short of it', () => {
    expect(warningsOf('70 %')).toContain(sentence);
  });

  test('keeps still where the blend reaches it', () => {
    expect(warningsOf('68 %').filter((each) => each.includes('brightness of the stock'))).toEqual([]);
  });

  test('asks for the brightness of every line', () => {
    const open = openCase(writeCase(twoLineCase('50 %', { 'mill.limit.brightness': '70 %' })));

    expect(open.ok && open.value.gaps.map((gap) => ('id' in gap ? gap.id : ''))).toEqual([
      'mill.one.brightness',
      'mill.two.brightness',
    ]);
  });
});

describe('a case without a brightness', () => {
  test('has no such result', () => {
    expect(evaluated(twoLineCase('50 %', {})).model.graph.positions.has('mill.product.brightness')).toBe(false);
  });
});
