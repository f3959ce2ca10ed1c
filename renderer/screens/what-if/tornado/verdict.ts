import type { Sensitivity, Spread } from '../../../../src/index.ts';
import { lowerFirst } from '../../../numbers/letter-case.ts';
import { inputName } from './input-name.ts';
import { percentWords } from './method-words.ts';

const mostNamed = 3;

/** Which inputs could turn the answer alone, the largest named. Inputs without a known range say nothing here. */
export function verdictOf(sensitivity: Sensitivity, spread: Spread, locale: string): string {
  const { judged, base, method, share } = sensitivity;
  if (!Number.isFinite(base)) return 'The answer itself cannot be worked out yet.';
  const reach = method === 'usual range' ? 'within its usual range' : `when moved by ${percentWords(share, locale)}`;
  const turning = judged.filter(({ flips, isKnown }) => flips && isKnown);
  if (turning.length === 0) return `No input could turn the answer alone ${reach}.`;
  const named = turning.slice(0, mostNamed).map((each) => lowerFirst(inputName(each, spread)));
  const rest = turning.length > mostNamed ? ', and more' : '';
  const count = turning.length === 1 ? '1 input' : `${String(turning.length)} inputs`;
  return `${count} could turn the answer alone: ${listed(named, rest === '')}${rest}.`;
}

function listed(names: readonly string[], closes: boolean): string {
  if (!closes || names.length < 2) return names.join(', ');
  return `${names.slice(0, -1).join(', ')} and ${names.at(-1) ?? ''}`;
}
