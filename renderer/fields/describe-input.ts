import type { InputView } from '../../src/index.ts';
import type { NumberStyle } from '../numbers/number-style.ts';
import { statusWords } from './status-words.ts';

/** "Usual 250 to 400 €/t. Common practice, no source." */
export function describeInput(input: InputView, numbers: NumberStyle): string {
  return [usualRange(input, numbers), whereFrom(input)].filter((sentence) => sentence !== '').join(' ');
}

export function usualRange({ low, high, unit }: InputView, numbers: NumberStyle): string {
  if (low === null && high === null) return '';
  const named = unit === '1' ? '' : `\u00a0${numbers.unit(unit)}`;
  if (low === null) return `Usual: at most ${numbers.digits(high ?? '')}${named}.`;
  if (high === null) return `Usual: at least ${numbers.digits(low)}${named}.`;
  if (low === high) return '';
  return `Usual ${numbers.digits(low)} to ${numbers.digits(high)}${named}.`;
}

/** How far the figure can be believed, and where it comes from. */
export function whereFrom({ status, source }: InputView): string {
  const words = statusWords[status];
  const saysItself = source === '' || source.toLowerCase().startsWith(words.toLowerCase());
  const sentence = saysItself ? source || words : `${words}: ${source}`;
  return sentence.endsWith('.') ? sentence : `${sentence}.`;
}
