import type { SameProductQuestion } from '../case/same-product.ts';
import type { SameProductStand } from '../study/trust/same-product.ts';

/** The five questions as they are asked. */
export const sameProductLabels: Readonly<Record<SameProductQuestion, string>> = {
  'food contact': 'Food contact',
  strength: 'Strength at the stated grammage',
  brightness: 'Brightness and shade',
  surface: 'Surface and print',
  customer: 'Customer approval',
};

/** On what condition two routes may be compared: "both make the same product (not confirmed)"; "" once all five are answered yes. */
export function sameProductPhrase({ stand, questions }: Pick<SameProductStand, 'stand' | 'questions'>): string {
  if (stand === 'confirmed') return '';
  if (stand === 'not confirmed') return 'both make the same product (not confirmed)';
  const denied = questions
    .filter(({ reply }) => reply === 'no')
    .map(({ question }) => sameProductLabels[question].toLowerCase());
  return `both make the same product (answered no: ${denied.join('; ')})`;
}

const counts = ['none', 'one', 'two', 'three', 'four', 'five'] as const;

/** Where the five questions stand: "Not confirmed: two of five are open." */
export function sameProductHeading({ stand, open, questions }: SameProductStand): string {
  if (stand === 'confirmed') return 'Confirmed: all five are answered yes.';
  const left = `${counts[open] ?? String(open)} of five ${open === 1 ? 'is' : 'are'} open`;
  if (stand === 'not confirmed') return `Not confirmed: ${left}.`;
  const denied = questions.filter(({ reply }) => reply === 'no').length;
  return `Not the same: ${counts[denied] ?? String(denied)} answered no${open === 0 ? '' : `, ${left}`}.`;
}
