import { readEntry } from '../../../fields/read-entry.ts';

export type ShareReading =
  { readonly kind: 'read'; readonly share: number } | { readonly kind: 'refused'; readonly sentence: string };

/** Reads by how many per cent all inputs are moved, 1 to 100; as a share. */
export function readShare(text: string, decimalMark: string): ShareReading {
  const reading = readEntry(text.replace(/^\s*±/u, ''), decimalMark);
  if (reading.kind !== 'read') return { kind: 'refused', sentence: reading.sentence };
  const [digits = '', unit = '%'] = reading.typed.split(' ');
  const percent = Number(digits);
  if (unit !== '%') return { kind: 'refused', sentence: 'It is given in per cent.' };
  if (percent < 1 || percent > 100) return { kind: 'refused', sentence: `${text.trim()} is not from 1 to 100 %.` };
  return { kind: 'read', share: Number((percent / 100).toPrecision(12)) };
}
