import type { Reason } from '../kernel/evaluate/failure.ts';
import { boundsPhrase } from './bounds-phrase.ts';
import { shortNumber } from './short-number.ts';

/** Figures that take what others leave: a share, and what is made of one that has no name of its own. By their ids. */
const takesTheRest = /\.share$|\.residue\.[^.]+\.wet\.[^.]+$|\.additive\.[^.]+$/u;

/** Why a figure cannot be worked out, and where that began. `id` is that of the figure, where it has one. */
export function failureSentence(origin: string, reason: Reason, id = ''): string {
  switch (reason.kind) {
    case 'no value given':
      return `${origin} has no figure yet.`;
    case 'division by zero':
      return `${origin} cannot be worked out: it would need a division by nothing.`;
    case 'no real power':
      return `${origin} cannot be worked out: it would need ${shortNumber(reason.base, 6)} to the power of ${shortNumber(reason.exponent, 6)}, which is no real number.`;
    case 'outside':
      if (takesTheRest.test(id) && reason.bounds.least === '0' && Number(reason.value) < 0)
        return `${origin} cannot be worked out: it takes what the others leave, and they already take ${shortNumber(String((1 - Number(reason.value)) * 100), 6)} %.`;
      return `${origin} cannot be worked out: it comes to ${shortNumber(reason.value, 6)}; possible is ${boundsPhrase(reason.bounds)}.`;
  }
}
