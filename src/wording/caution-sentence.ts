import type { Caution } from '../study/warnings.ts';
import { boundsPhrase } from './bounds-phrase.ts';
import { unitLabel } from './unit-label.ts';

/** What to look at, where, and what is usual. */
export function cautionSentence(caution: Caution): string {
  switch (caution.kind) {
    case 'list price':
      return `${caution.material}: a list price without a discount. Recovered paper is quoted as traded, so a list price makes the other route look cheaper than it is.`;
    case 'unusual figure': {
      const { input, given } = caution;
      const unit = unitLabel(input.entryUnit);
      const where = input.where === undefined ? '' : `, ${input.where}`;
      return `${input.label}${where}: ${given}${unit === '' ? '' : ` ${unit}`} is outside what is usual, ${input.usual.low ?? ''} to ${input.usual.high ?? ''}.`;
    }
    case 'effluent below nothing':
      return `${caution.route}: the water balance leaves ${short(caution.value)} m³ of effluent a tonne, which cannot be. Fresh water is too low for what evaporates and leaves with residues.`;
    case 'unpriced additive':
      return `${caution.route}: the machine adds something at the ${caution.place}, but no additive of the route stands for it, so it costs nothing.`;
    case 'no figure':
      return `${caution.label} has no figure yet; what is made of it cannot be worked out.`;
    case 'cannot be worked out':
      return caution.bounds === null
        ? `${caution.label} cannot be worked out.`
        : `${caution.label} cannot be worked out: it comes to ${short(caution.value)}; possible is ${boundsPhrase(caution.bounds)}.`;
  }
}

function short(digits: string): string {
  return String(Number(Number(digits).toPrecision(4))).replace('-', '\u2212');
}
