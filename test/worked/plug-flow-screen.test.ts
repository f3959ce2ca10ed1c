import { describe, expect, test } from 'vitest';
import type { Stage } from '../../src/case/case.ts';
import { type Evaluation, evaluated } from '../support/evaluation.ts';
import { smallCase } from '../support/small-case.ts';

function screen(shape: Partial<Stage>, figures: Readonly<Record<string, string>>): Evaluation {
  return evaluated(
    smallCase({
      stages: [{ id: 'screen', like: 'fine', levels: 1, ...shape }],
      figures: { 'material.paper.macroStickies': '1 %', 'material.paper.ash': '10 %', ...figures },
    }),
  );
}
const loss = (mill: Evaluation, name: string): number => mill.number(`mill.line.screen.loss.${name}`);

// Source: plug-flow law of a screen, E = R_v^beta (Gooding and Kerekes, from memory); the numbers are worked by hand.
describe('a screen by plug flow, exponents 0.5 for fibre and 0.25 for macro-stickies', () => {
  const exponents = {
    'mill.line.screen.exponent.fibre': '0.5 1',
    'mill.line.screen.exponent.macroStickies': '0.25 1',
    'mill.line.screen.exponent.ash': '1 1',
  };

  test('rejects 44.72 % of the fibre at 20 % by volume', () => {
    // 0.2^0.5 = 0.447214; 0.2^0.25 = 0.668740; what passes with the water leaves at 0.2.
    const byVolume = screen(
      { law: 'plug flow', rejectRateBy: 'volume' },
      { ...exponents, 'mill.line.screen.rejectRate': '20 %' },
    );

    expect(loss(byVolume, 'fibre').toFixed(6)).toBe('0.447214');
    expect(loss(byVolume, 'macroStickies').toFixed(6)).toBe('0.668740');
    expect(loss(byVolume, 'ash').toFixed(6)).toBe('0.200000');
  });

  test('rejects 44.72 % of the macro-stickies at 20 % of the fibre', () => {
    // R_v = 0.2^(1/0.5) = 0.04; 0.04^0.25 = 0.447214, the same as 0.2^(0.25/0.5); with the water 0.04.
    const byMass = screen(
      { law: 'plug flow', rejectRateBy: 'mass' },
      { ...exponents, 'mill.line.screen.rejectRate': '20 %' },
    );

    expect(loss(byMass, 'fibre').toFixed(6)).toBe('0.200000');
    expect(loss(byMass, 'macroStickies').toFixed(6)).toBe('0.447214');
    expect(loss(byMass, 'ash').toFixed(6)).toBe('0.040000');
  });
});

// Source: water and fibre balance of one screen, worked by hand. At 2 %, 20 % of the fibre in a reject thickened 2 times is 10 % of
// the volume: the accept keeps 0.8 of the fibre in 0.9 of the volume, 1.7778 %, and the reject is at 4 %.
test('a screen that thickens its reject twice thins its accept from 2 to 1.7778 %', () => {
  const mill = screen(
    {},
    {
      'mill.line.screen.rejectRate': '20 %',
      'mill.line.screen.thickening': '2 1',
      'mill.line.screen.consistency': '2 %',
    },
  );

  expect((100 * mill.number('mill.line.screen.level.1.acceptConsistency')).toFixed(4)).toBe('1.7778');
  expect(100 * mill.number('mill.line.screen.level.1.rejectConsistency')).toBeCloseTo(4, 12);
  expect(loss(mill, 'water')).toBeCloseTo(0.1, 14);
});

// Source: worked by hand. With every accept forward the shares multiply: 0.2^3 = 0.8 % of the fibre is lost. With only the second
// stage forward, the third gives back to it: stage 2 loses 0.2 x 0.2/(1 - 0.2 x 0.8) = 0.047619 of its feed, the whole 0.2 x 0.047619.
describe('three screens at 20 % each', () => {
  test.each([
    { forward: [2, 3], lost: '0.8000', meaning: 'lose 0.8 % where both later accepts go forward' },
    { forward: [2], lost: '0.9524', meaning: 'lose 0.9524 % where only the second goes forward' },
    { forward: [], lost: '1.1765', meaning: 'lose 1.1765 % where both go back' },
  ])('$meaning', ({ forward, lost }) => {
    const mill = screen({ levels: 3, forward }, { 'mill.line.screen.rejectRate': '20 %' });

    expect((100 * loss(mill, 'fibre')).toFixed(4)).toBe(lost);
  });
});
