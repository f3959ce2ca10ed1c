import { unitLabel } from '../../../../src/wording/unit-label.ts';
import { type EntryChoice, readEntry } from '../../../fields/read-entry.ts';

export type RangeReading =
  /** Plain digits in the entry unit of the input. */
  | { readonly kind: 'read'; readonly low: string; readonly high: string }
  | {
      readonly kind: 'refused';
      readonly end: 'low' | 'high';
      readonly sentence: string;
      readonly choices: readonly EntryChoice[];
    };

/** Reads the two ends of a range as they were typed. A unit may stand behind a figure if it is that of the input. */
export function readRange(low: string, high: string, unit: string, decimalMark: string): RangeReading {
  const first = readEnd(low, unit, decimalMark);
  if (first.kind === 'refused') return { ...first, end: 'low' };
  const second = readEnd(high, unit, decimalMark);
  if (second.kind === 'refused') return { ...second, end: 'high' };
  if (Number(first.digits) >= Number(second.digits))
    return { kind: 'refused', end: 'high', sentence: 'The low end must lie below the high end.', choices: [] };
  return { kind: 'read', low: first.digits, high: second.digits };
}

type EndReading =
  | { readonly kind: 'read'; readonly digits: string }
  | { readonly kind: 'refused'; readonly sentence: string; readonly choices: readonly EntryChoice[] };

function readEnd(text: string, unit: string, decimalMark: string): EndReading {
  const reading = readEntry(text, decimalMark);
  if (reading.kind === 'unreadable') return { kind: 'refused', sentence: reading.sentence, choices: [] };
  if (reading.kind === 'either') return { kind: 'refused', sentence: reading.sentence, choices: reading.choices };
  const [digits = '', ...rest] = reading.typed.split(' ');
  const typed = rest.join(' ');
  if (typed === '' || [unit, unitLabel(unit)].some((each) => alike(each, typed))) return { kind: 'read', digits };
  const wanted = unitLabel(unit) === '' ? 'a plain number' : `in ${unitLabel(unit)}`;
  return { kind: 'refused', sentence: `The range is given ${wanted}, not in “${typed}”.`, choices: [] };
}

function alike(one: string, other: string): boolean {
  return one.replaceAll(' ', '').toLowerCase() === other.replaceAll(' ', '').toLowerCase();
}
