import type { ClaimCaution } from '../study/claim-cautions.ts';
import { shortNumber } from './short-number.ts';

/** What stands in the way of a public claim. */
export function claimCautionSentence(caution: ClaimCaution): string {
  switch (caution.kind) {
    case 'too close to call':
      return `Carbon: the routes differ by ${shortNumber(String(Math.abs(caution.difference)), 3)} kg CO2e a tonne, less than the ${shortNumber(String(caution.doubt), 3)} that the ranges of the factors leave open. Neither can be called better.`;
    case 'mixed years':
      return `Carbon factors of different years are used together (${caution.years.join(', ')}); sets of different years do not compare well.`;
    case 'mixed warming potentials':
      return `Warming potentials of ${caution.wanted} are chosen, but ${String(caution.count)} carbon ${caution.count === 1 ? 'factor rests' : 'factors rest'} on those of ${caution.others.join(' and ')}: the choice changes the methane of landfills alone.`;
    case 'unsourced factors':
      return `${String(caution.count)} of ${String(caution.of)} carbon factors are common practice or from memory; replace them before anything is published.`;
  }
}

/** Stands wherever a footprint is shown or printed. */
export const publicClaimCaution =
  'For internal use. A public claim that compares two products needs a review by others and must keep the rules that apply where it is made.';
