import { readNumber } from '../../fields/read-number.ts';

/**
 * Readings typed or pasted one after the other, with spaces, lines, semicolons or commas between them: as plain digits with spaces between, or
 * null where one cannot be read. A comma between two figures parts them where the person's decimal mark is a point.
 */
export function readReadings(text: string, decimalMark: string): string | null {
  const spaced = text.replaceAll('%', ' ').replace(/[−–]/gu, '-');
  const parts = spaced.split(decimalMark === '.' ? /[\s;,]+/u : /[\s;]+|,\s+/u).filter((part) => part !== '');
  const read = parts.map((part) => {
    const reading = readNumber(part, decimalMark);
    return reading.kind === 'number' ? reading.digits : reading.kind === 'either' ? reading.decimal : null;
  });
  return read.includes(null) ? null : read.join(' ');
}
