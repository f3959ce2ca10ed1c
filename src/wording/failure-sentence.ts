import type { Reason } from '../kernel/evaluate/failure.ts';
import { boundsPhrase } from './bounds-phrase.ts';
import { shortNumber } from './short-number.ts';

/** Why a figure cannot be worked out, and where that began. */
export function failureSentence(origin: string, reason: Reason): string {
  switch (reason.kind) {
    case 'no value given':
      return `${origin} has no figure yet.`;
    case 'division by zero':
      return `${origin} cannot be worked out: it would need a division by nothing.`;
    case 'no real power':
      return `${origin} cannot be worked out: it would need ${shortNumber(reason.base, 6)} to the power of ${shortNumber(reason.exponent, 6)}, which is no real number.`;
    case 'outside':
      return `${origin} cannot be worked out: it comes to ${shortNumber(reason.value, 6)}; possible is ${boundsPhrase(reason.bounds)}.`;
  }
}
