import type { Reason } from '../kernel/evaluate/failure.ts';
import { boundsPhrase } from './bounds-phrase.ts';

/** Why a figure cannot be worked out, and where that began. */
export function failureSentence(origin: string, reason: Reason): string {
  switch (reason.kind) {
    case 'no value given':
      return `${origin} has no figure yet.`;
    case 'division by zero':
      return `${origin} would need a division by nothing.`;
    case 'no real power':
      return `${origin} would need ${reason.base} to the power of ${reason.exponent}, which is no real number.`;
    case 'outside':
      return `${origin} comes to ${shortDigits(reason.value)}; possible is ${boundsPhrase(reason.bounds)}.`;
  }
}

function shortDigits(digits: string): string {
  return String(Number(Number(digits).toPrecision(6)));
}
