import type { CapitalStand } from '../study/before-new-plant.ts';
import type { SameProductStand } from '../study/trust/same-product.ts';
import { sameProductPhrase } from './same-product-phrase.ts';

const befores: Readonly<Record<CapitalStand, string>> = {
  counted: '',
  'in the plan': 'Before the capital of the plan',
  'before new plant': 'Before any new plant',
};

/** What of a comparison its headline depends on. */
export interface Conditional {
  readonly capital: CapitalStand;
  readonly sameProduct: Pick<SameProductStand, 'stand' | 'questions'>;
}

/** With what a headline begins: on what condition it holds; "" where it holds as it is. */
export function conditionPhrase({ capital, sameProduct }: Conditional): string {
  const [before, same] = [befores[capital], sameProductPhrase(sameProduct)];
  if (same === '') return before;
  return before === '' ? `If ${same}` : `${before}, if ${same}`;
}

/** A headline with its condition before it; `sentence` begins in small letters unless with a name. */
export function headlined(condition: Conditional, sentence: string): string {
  const phrase = conditionPhrase(condition);
  return phrase === '' ? `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}` : `${phrase}, ${sentence}`;
}
