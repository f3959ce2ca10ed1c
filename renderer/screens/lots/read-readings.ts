import { readNumber } from '../../fields/read-number.ts';

/**
 * Readings typed or pasted one after the other, with spaces, lines, semicolons or commas between them: as plain digits with spaces between, or
 * null where one cannot be read. A comma with no space behind it parts figures only where each of them has a point of its own.
 */
export function readReadings(text: string, decimalMark: string): string | null {
  const parts = text
    .replaceAll('%', ' ')
    .split(/,?\s+|;|,$/u)
    .flatMap((part) => (/^\d+\.\d+(,\d+\.\d+)+$/u.test(part) ? part.split(',') : [part]))
    .filter((part) => part !== '');
  const read = parts.map((part) => {
    const reading = readNumber(part, decimalMark);
    return reading.kind === 'number' ? reading.digits : null;
  });
  return read.includes(null) ? null : read.join(' ');
}
