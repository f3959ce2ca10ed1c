import { describe, expect, it } from 'vitest';
import type { Reason } from '../../src/kernel/evaluate/failure.ts';
import { failureSentence } from '../../src/wording/failure-sentence.ts';

type Told = {
  readonly [Kind in Reason['kind']]: { readonly reason: Extract<Reason, { kind: Kind }>; readonly says: string };
};

/** One of every kind: a kind that is missing here does not compile. */
const everyKind: Told = {
  'no value given': { reason: { kind: 'no value given' }, says: 'Line yield has no figure yet.' },
  'division by zero': {
    reason: { kind: 'division by zero' },
    says: 'Line yield cannot be worked out: it would need a division by nothing.',
  },
  'no real power': {
    reason: { kind: 'no real power', base: '-1.23456789', exponent: '0.5' },
    says: 'Line yield cannot be worked out: it would need \u22121.23457 to the power of 0.5, which is no real number.',
  },
  outside: {
    reason: { kind: 'outside', value: '1.041666666666666666666666666666667', bounds: { least: '0', most: '1' } },
    says: 'Line yield cannot be worked out: it comes to 1.04167; possible is 0 to 1.',
  },
};

describe('a failure', () => {
  it.each(Object.values(everyKind))(
    'by "$reason.kind" is told: what failed, at what, and what would be possible',
    ({ reason, says }) => {
      expect(failureSentence('Line yield', reason)).toBe(says);
    },
  );
});
