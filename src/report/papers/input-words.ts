import type { Status } from '../../kernel/graph/input-declaration.ts';
import { formatNumber } from '../../wording/number-format.ts';
import { unitLabel } from '../../wording/unit-label.ts';
import type { InputView } from '../spread.ts';

/** "472 €/adt", with every digit that was given; "not yet" where nobody gave one. */
export function inputValue({ value, unit }: InputView, locale: string): string {
  return value === '' ? 'not yet' : `${formatNumber(value, { locale })} ${unitLabel(unit)}`.trimEnd();
}

const words: Readonly<Partial<Record<Status, string>>> = { memory: 'From memory, to be verified' };

/** Where a figure comes from, never nothing: what nobody gave a source for is said to have none. */
export function inputSource({ source, status, touched }: InputView): string {
  const said = words[status];
  if (source !== '') return said === undefined ? source : `${said}: ${source}`;
  return said ?? (touched ? 'Given without a source' : `Default: ${status}`);
}
