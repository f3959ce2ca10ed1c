import { describe, expect, test } from 'vitest';
import { type Evaluation, evaluated } from '../support/evaluation.ts';
import { smallCase } from '../support/small-case.ts';

/** Screens that reject a fifth of the fibre in each stage, macro-stickies with a separation quotient of 0.9. */
function screens(levels: number): Evaluation {
  return evaluated(
    smallCase({
      stages: [{ id: 'screen', like: 'fine', levels }],
      figures: {
        'material.paper.macroStickies': '1 %',
        'mill.line.screen.rejectRate': '20 %',
        'mill.line.screen.quotient.macroStickies': '0.9 1',
      },
    }),
  );
}

// Source: derived by hand from E = R/(1 - Q + Q R) (Nelson 1981, from memory) and the balance of a feedback cascade.
// One stage: E = 0.2/0.28 = 0.714286. Two stages, fibre: 0.2 x 0.2/(1 - 0.2 x 0.8) = 0.0476190;
// macro-stickies: 0.714286^2/(1 - 0.714286 x 0.285714) = 0.641026. Three and four follow the same way.
describe('a screen of quotient 0.9 at a reject rate of 20 %', () => {
  test.each([
    { levels: 1, fibreLost: '20.0000', removed: '71.43' },
    { levels: 2, fibreLost: '4.7619', removed: '64.10' },
    { levels: 3, fibreLost: '1.1765', removed: '61.58' },
    { levels: 4, fibreLost: '0.2933', removed: '60.62' },
  ])('with $levels stages loses $fibreLost % of the fibre and removes $removed %', ({ levels, fibreLost, removed }) => {
    const line = screens(levels);

    expect((100 * line.number('mill.line.screen.loss.fibre')).toFixed(4)).toBe(fibreLost);
    expect((100 * line.number('mill.line.screen.loss.macroStickies')).toFixed(2)).toBe(removed);
  });

  test('removes less with more stages, where a share left to the power of the stages would say far more', () => {
    // 1 - (1 - 0.714286)^3 = 97.67 %: wrong, because later stages treat the rejects and give accepts back.
    const three = screens(3).number('mill.line.screen.loss.macroStickies');

    expect(1 - (1 - 0.714286) ** 3).toBeCloseTo(0.9767, 4);
    expect(three).toBeCloseTo(0.6158, 4);
    expect(three).toBeLessThan(screens(1).number('mill.line.screen.loss.macroStickies'));
  });
});
