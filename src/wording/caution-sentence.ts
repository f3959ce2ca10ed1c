import type { Caution } from '../study/warnings.ts';
import { boundsPhrase } from './bounds-phrase.ts';
import { claimCautionSentence } from './claim-caution-sentence.ts';
import { failureSentence } from './failure-sentence.ts';
import { freshnessSentence } from './freshness-sentence.ts';
import { machineCautionSentence } from './machine-caution-sentence.ts';
import { processCautionSentence } from './process-caution-sentence.ts';
import { shortNumber } from './short-number.ts';
import { trueMinus } from './true-minus.ts';
import { unitLabel } from './unit-label.ts';

/** What to look at, where, and what is usual. */
export function cautionSentence(caution: Caution): string {
  switch (caution.kind) {
    case 'list price':
      return caution.origin === 'virgin'
        ? `${caution.material}: a list price without a discount. Recovered paper is quoted as traded, so a list price makes the other route look cheaper than it is.`
        : `${caution.material}: a list price without a discount. What a mill agrees on lies below the list, so this price makes recovered paper look dearer than it is.`;
    case 'unusual figure': {
      const { input, given } = caution;
      const unit = unitLabel(input.entryUnit);
      const where = input.where === undefined ? '' : `, ${input.where}`;
      return `${input.label}${where}: ${trueMinus(given)}${unit === '' ? '' : ` ${unit}`} is outside what is usual, ${boundsPhrase({ least: input.usual.low ?? '', most: input.usual.high ?? '' })}.`;
    }
    case 'before new plant':
      return `${caution.route}: no people, maintenance or capital of its line are entered, so the difference stands before any new plant.`;
    case 'limit broken': {
      const { limit, routeLabel, value, unit } = caution.reading;
      const label = unitLabel(unit) === '' ? '' : ` ${unitLabel(unit)}`;
      return `${routeLabel}: ${limit.label} comes to ${shortNumber(String(value), 4)}${label}; the limit is ${limit.sense} ${trueMinus(limit.value)}${label}${limit.kind === 'soft' ? ', a soft one' : ''}.`;
    }
    case 'set aside':
      return `${placed(caution)} is worked out while the case says so; the figure given for it, ${trueMinus(caution.given)}, stands aside.`;
    case 'freight by load':
      return `${caution.material}: freight is worked out by the load, so the freight given by the tonne, ${trueMinus(caution.given)}, counts for nothing.`;
    case 'no contingency':
      return 'The investment plan has no contingency: it takes its estimate for what will be spent. A usual allowance depends on how far the estimate has been worked out.';
    case 'not all written off':
      return `The shares of the capital that the plan writes off add up to ${shortNumber(String(caution.percent), 4)} %, not 100 %. What is left over is taken off the last profit.`;
    case 'effluent below nothing':
      return `${caution.route}: the water balance leaves ${shortNumber(caution.value, 4)} m³ of effluent a tonne, which cannot be. Fresh water is too low for what evaporates and leaves with residues.`;
    case 'unpriced additive':
      return `${caution.route}: the machine adds something at the ${caution.place}, but no additive of the route stands for it, so it costs nothing.`;
    case 'no figure':
      return `${placed(caution)} has no figure yet; what is made of it cannot be worked out.`;
    case 'cannot be worked out':
      return caution.emptiedBy === undefined
        ? failureSentence(placed(caution), caution.reason, caution.about)
        : `${placed(caution)} cannot be worked out: nothing is left after "${caution.emptiedBy}", which removes all that comes to it.`;
    case 'old figure':
    case 'old factors':
    case 'no date':
    case 'dates apart':
      return freshnessSentence(caution);
    case 'wide gap': {
      const { row, actual } = caution;
      const percent = shortNumber(String(Math.abs(actual.gap) * 100), 3);
      return `${placed(row)}: computed ${shortNumber(String(actual.computed), 4)}, measured ${shortNumber(actual.value, 4)} ${unitLabel(actual.symbols)}${actual.period === undefined ? '' : ` (${actual.period})`}: ${percent} % ${actual.gap > 0 ? 'above' : 'below'} what was measured. Nothing was fitted.`;
    }
    case 'too close to call':
    case 'mixed years':
    case 'mixed warming potentials':
    case 'unsourced factors':
      return claimCautionSentence(caution);
    case 'no machine effect':
    case 'hours without a cost':
    case 'seconds without an allowance':
    case 'price and contribution':
      return machineCautionSentence(caution);
    default:
      return processCautionSentence(caution);
  }
}

/** A share or a rate is there many times over: the sentence says of what. */
function placed({ label, where }: { readonly label: string; readonly where: string }): string {
  return where === '' ? label : `${label} (${where})`;
}
