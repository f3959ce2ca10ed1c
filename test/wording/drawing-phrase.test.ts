import { describe, expect, it } from 'vitest';
import { distributionPhrase } from '../../src/wording/distribution-phrase.ts';
import { drawingPhrase } from '../../src/wording/drawing-phrase.ts';
import { trialsOf } from '../study/uncertainty/demonstration.ts';

const price = { law: 'uniform', low: '80', high: '120' } as const;
const trials = 1000;

describe('what one trial is', () => {
  it('names the years, what is drawn anew and what is carried over', () => {
    const inputs = {
      'material.mixed.price': price,
      'recovered.capital': { law: 'uniform', low: '4e7', high: '5e7' } as const,
    };

    expect(drawingPhrase(trialsOf('difference.total', inputs, { trials, years: 10 }), 'en')).toBe(
      'mean of 10 years; 1 input drawn anew each year with 0.7 of a departure carried over, the other inputs once',
    );
  });

  it('is one year where nothing changes from year to year', () => {
    const inputs = { 'material.mixed.price': { ...price, drawn: 'once' } as const };

    expect(drawingPhrase(trialsOf('difference.total', inputs, { trials, years: 10 }), 'en')).toBe(
      'one year, every input drawn once',
    );
  });
});

describe('how an input is drawn', () => {
  it.each([
    [{ kind: 'uniform', low: 1, high: 2.5 } as const, 'uniform, 1 to 2.5'],
    [{ kind: 'PERT', low: 1, mode: 2, high: 4 } as const, 'PERT, 1 to 4, most likely 2'],
    [
      { kind: 'normal', mean: 20, deviation: 3, low: 12, high: Infinity } as const,
      'normal, mean 20, deviation 3, not below 12',
    ],
    [
      {
        kind: 'discrete',
        values: [
          { value: 1, weight: 3 },
          { value: 2, weight: 1 },
        ],
      } as const,
      'one of 1 (weight 3), 2 (weight 1)',
    ],
  ])('is said in words', (distribution, words) => {
    expect(distributionPhrase(distribution, 'en')).toBe(words);
  });
});
