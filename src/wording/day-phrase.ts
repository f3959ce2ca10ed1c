import { partsOf } from '../case/day.ts';

const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** "2026-11-03" as "3 November 2026". */
export function dayPhrase(day: string): string {
  const [year, month, date] = partsOf(day);
  return `${String(date)} ${months[month - 1] ?? ''} ${String(year)}`;
}
