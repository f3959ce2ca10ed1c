import type { CellReading } from '../index.ts';

/** The decimal mark of a locale. */
export function decimalMarkOf(locale: string): string {
  return new Intl.NumberFormat(locale).formatToParts(0.5).find(({ type }) => type === 'decimal')?.value ?? '.';
}

/** A number of a text file, without marks between thousands: with the person's decimal mark, or a point that can mean nothing else. */
export function readPlainNumber(cell: string, decimalMark: string): CellReading {
  const own = new RegExp(`^\\d+(?:[${decimalMark}]\\d+)?$`, 'u');
  if (own.test(cell)) return { kind: 'number', digits: cell.replace(decimalMark, '.') };
  if (/^\d{1,3}[.,]\d{3}$/u.test(cell)) return { kind: 'either' };
  return /^\d+\.\d+$/u.test(cell) ? { kind: 'number', digits: cell } : { kind: 'unreadable' };
}
