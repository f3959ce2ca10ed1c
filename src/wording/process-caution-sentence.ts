import type { ProcessCaution } from '../study/process-caution.ts';
import { inSentence } from './in-sentence.ts';
import { shortNumber } from './short-number.ts';
import { unitLabel } from './unit-label.ts';

const words = { wire: 'bale wire', wetStrength: 'wet-strength paper' } as const;

/** What a technologist would remark on, in one or two sentences. */
export function processCautionSentence(caution: ProcessCaution): string {
  switch (caution.kind) {
    case 'unusual yield':
      return `${caution.where}: a line yield of ${short(caution.value)} % is outside what is usual for this product, ${String(caution.low)} to ${String(caution.high)} % (common practice, no source).`;
    case 'unsuited to a drum':
      return caution.component === 'wire'
        ? `${caution.where}: ${short(caution.share)} % ${words.wire} comes to the drum pulper. Wires must be off before a drum; a vat pulls them out on its rope.`
        : `${caution.where}: ${short(caution.share)} % ${words.wetStrength} comes to the drum pulper, which does not break it up: it leaves whole as reject.`;
    case 'burns badly':
      return caution.value < 0
        ? `${caution.where}: ${inSentence(caution.label)} is too wet to burn; as fired it takes ${short(-caution.value)} GJ a wet tonne. The heat it takes is charged.`
        : `${caution.where}: ${inSentence(caution.label)} gives ${short(caution.value)} GJ a wet tonne as fired; below about 4.5 it does not burn by itself and needs other fuel.`;
    case 'edge load':
      return `${caution.where}: a specific edge load of ${short(caution.value)} J/m is outside what refiners are run at, ${String(caution.low)} to ${String(caution.high)}.`;
    case 'above limit':
    case 'below limit':
      return `${caution.where}: ${inSentence(caution.label)} comes to ${short(caution.value)} ${caution.unit}; the limit set is ${short(caution.limit)}.`;
    case 'too wet to accept':
      return `${caution.where}: moisture of ${short(caution.value)} % is above ${short(caution.limit)} %, at which deliveries are refused.`;
    case 'beyond the tiers':
      return `${caution.where}: ${short(caution.value)} ${unitLabel(caution.unit)} is more than the price tiers hold, ${short(caution.most)}. What is beyond them is priced like the last tier, which may be too little.`;
    case 'gross refining':
      return `${caution.where}: only the whole draw of this refiner is known, not its net energy, so it adds nothing to strength.`;
    case 'heat below nothing':
      return `${caution.where}: residues in the own boiler take ${short(-caution.value)} GJ a tonne more than they give; that heat is charged.`;
    case 'other service':
      return `${caution.where} makes ${short(caution.value)} t for each reference tonne; every figure is per reference tonne.`;
    case 'from memory':
      return `${String(caution.count)} ${caution.count === 1 ? 'figure was' : 'figures were'} recalled, not seen in a source, and must be verified before being quoted: ${listed(caution.labels)}.`;
  }
}

function listed(labels: readonly string[]): string {
  const distinct = [...new Set(labels.map(inSentence))];
  const shown = distinct.slice(0, 4);
  return distinct.length > shown.length ? `${shown.join(', ')} and others` : shown.join(', ');
}

function short(value: number): string {
  return shortNumber(String(value), 3);
}
