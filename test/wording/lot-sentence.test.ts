import { describe, expect, test } from 'vitest';
import { blendReasonSentence, givenBlendSentence } from '../../src/wording/blend-sentence.ts';
import { lotSentence } from '../../src/wording/lot-sentence.ts';

describe('what is said of a lot', () => {
  test.each([
    [
      { kind: 'fee received' },
      'A fee is received for taking this lot; it is settled as weighed, whatever the moisture.',
    ],
    [{ kind: 'no dry matter' }, 'At 100 % moisture there is no dry matter to pay for or to make stock of.'],
    [{ kind: 'nothing usable' }, 'All of it is unusable: no stock can be made of it, at any price.'],
    [
      { kind: 'over tolerance', what: 'non-paper', over: 0.7979 },
      'Non-paper is 0,8 points above what the grade tolerates.',
    ],
    [
      { kind: 'lacks', figure: 'price' },
      'No price is given: there is no cost and no rank, but what may be paid at most is known.',
    ],
  ] as const)('%j', (note, expected) => {
    expect(lotSentence(note, 'de')).toBe(expected);
  });
});

describe('what is said of a blend', () => {
  const labels = new Map([['a', 'Wetherby Yard']]);

  test('names the limit that is the reason, and how near a blend comes', () => {
    const reasons = [{ name: { kind: 'moisture' }, wanted: 7, reached: 9.5 }] as const;

    expect(blendReasonSentence(reasons, labels, 'en')).toBe(
      'No blend meets the limits: this one is the reason. Moisture of what is bought, %: 7 is set, the nearest blend comes to 9.5.',
    );
  });

  test('says what the shares add up to where they are not the whole', () => {
    expect(givenBlendSentence({ kind: 'not whole', sum: 97 }, labels, 'en')).toBe(
      'The shares of the blend add up to 97 %; they must make 100 %.',
    );
    expect(givenBlendSentence({ kind: 'not to be had', lots: ['a'] }, labels, 'en')).toBe(
      'Not to be had today: Wetherby Yard. Give their share to other lots.',
    );
  });
});
