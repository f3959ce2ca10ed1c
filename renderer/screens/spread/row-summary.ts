import type { Amount, Spread, SpreadRow } from '../../../src/index.ts';
import { lowerFirst } from '../../numbers/letter-case.ts';
import type { NumberStyle } from '../../numbers/number-style.ts';

type Summed =
  SpreadRow | { readonly label: string; readonly base: Amount; readonly with: Amount; readonly difference: Amount };

/** The name of a line: that of the left page, or of the only page that has it. */
export function rowName(row: SpreadRow): string {
  return row.base?.label ?? row.with?.label ?? '';
}

/** "Kraft pulp 454.16, office paper 329.84, recovered 124.32 less." */
export function rowSummary(spread: Spread, row: Summed, numbers: NumberStyle): string {
  const sides = 'label' in row ? bothAmounts(row.label, row.base, row.with) : linesOf(row);
  const parts = sides.map(({ label, amount }) => `${label} ${shown(amount, numbers)}`);
  const { shownPerTonne } = row.difference;
  const size = numbers.magnitude(shownPerTonne);
  const other = lowerFirst(spread.with.label);
  if (shownPerTonne === '') return `${parts.join(', ')}, difference not yet known.`;
  if (Number(shownPerTonne) === 0) return `${parts.join(', ')}, no difference.`;
  return `${parts.join(', ')}, ${other} ${size} ${Number(shownPerTonne) < 0 ? 'less' : 'more'}.`;
}

function bothAmounts(label: string, base: Amount, other: Amount): { label: string; amount: Amount }[] {
  return [
    { label, amount: base },
    { label: 'against', amount: other },
  ];
}

function linesOf({ base, with: other }: SpreadRow): { label: string; amount: Amount }[] {
  const sides = [base, other].filter((side) => side !== null);
  return sides.map(({ label, amount }, place) => ({ label: place === 0 ? label : lowerFirst(label), amount }));
}

function shown(amount: Amount, numbers: NumberStyle): string {
  return amount.shownPerTonne === '' ? 'not yet known' : numbers.digits(amount.shownPerTonne);
}
