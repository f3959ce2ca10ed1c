import { expect, it } from 'vitest';
import { restsPhrase } from '../../src/wording/rests-phrase.ts';

it('says on what a result rests in whole per cent that add up', () => {
  const thirds = { measured: 1 / 3, sourced: 1 / 3, 'rule of thumb': 1 / 3 };

  expect(restsPhrase(thirds, 'en')).toBe('measured 34\u00a0%, sourced 33\u00a0%, rule of thumb 33\u00a0%');
});

it('says nothing of a result that nothing moves', () => {
  expect(restsPhrase({ measured: 0, sourced: 0, 'rule of thumb': 0 }, 'en')).toBe('');
});
