import type { Amount, Explanation, Spread } from '../../../src/index.ts';
import type { NumberStyle } from '../../numbers/number-style.ts';

interface Shown {
  readonly digits: string;
  /** What one of the figure's last place is worth: money per tonne is shown in cents, per year in ten thousands. */
  readonly scale: number;
}

/** A figure of the ledger as the ledger shows it; null for every other figure, and for millions a year, whose unit differs. */
export function shownAs(spread: Spread, id: string): string | null {
  const shown = findShown(spread, id);
  return shown === null || shown.digits === '' || shown.scale !== 1 ? null : shown.digits;
}

/** Rounded parts add up to the rounded whole; where that moved a figure's last digit, it is said. */
export function roundingNote(spread: Spread, { id, value }: Explanation, numbers: NumberStyle): string {
  const shown = findShown(spread, id);
  if (shown === null || shown.digits === '' || Number.isNaN(value)) return '';
  const plain = (value / shown.scale).toFixed(2);
  if (Number(plain) === Number(shown.digits)) return '';
  return `Shown as ${numbers.digits(shown.digits)} so that the column adds up; by itself it is ${numbers.digits(plain)}.`;
}

function findShown(spread: Spread, id: string): Shown | null {
  for (const amount of amountsOf(spread)) {
    if (amount.perTonneId === id) return { digits: amount.shownPerTonne, scale: 1 };
    if (amount.perYearId === id) return { digits: amount.shownPerYear, scale: 1e6 };
  }
  return null;
}

function amountsOf(spread: Spread): Amount[] {
  const rows = spread.groups.flatMap((group) => group.rows);
  const sides = rows.flatMap((row) => [row.base, row.with]).filter((side) => side !== null);
  return [
    spread.base.total,
    spread.with.total,
    spread.difference,
    ...spread.groups.flatMap((group) => [group.base, group.with, group.difference]),
    ...sides.map(({ amount }) => amount),
    ...rows.map(({ difference }) => difference),
  ];
}
