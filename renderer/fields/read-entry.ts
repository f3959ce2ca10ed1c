import { readNumber } from './read-number.ts';
import { readSum } from './read-sum.ts';

export type EntryReading =
  /** What goes to the engine: plain digits, and the unit if one was typed. */
  | { readonly kind: 'read'; readonly typed: string }
  | { readonly kind: 'either'; readonly sentence: string; readonly choices: readonly EntryChoice[] }
  | { readonly kind: 'unreadable'; readonly sentence: string };

export interface EntryChoice {
  readonly label: string;
  readonly typed: string;
}

// Sign, then everything up to the last digit that a unit does not follow at once, then the unit: "−1 234,5 €/t".
const shape = /^(?<sign>[+-]?)\s*(?<number>[\d.,](?:[\d.,\s'’]*[\d.,])?)\s*(?<unit>[^\d\s.,].*)?$/u;

const arithmetic = /[\d.,]\s*[-+*×/÷]\s*[\d.,]/u;

/** One spelling of the minus, and no currency before the figure: that money is meant is known. */
export function tidied(text: string): string {
  return text
    .trim()
    .replace(/[−–]/gu, '-')
    .replace(/^\p{Sc}\s*/u, '');
}

/** Reads what a person typed into a slot: a number or simple arithmetic, with their decimal mark and perhaps a unit. Nothing is guessed. */
export function readEntry(text: string, decimalMark: string): EntryReading {
  const trimmed = tidied(text);
  if (trimmed === '') return { kind: 'unreadable', sentence: 'There is no figure here.' };
  const sum = readSum(trimmed, decimalMark);
  if (sum !== null) return { kind: 'read', typed: `${sum.digits} ${sum.rest.trim()}`.trim() };
  if (arithmetic.test(trimmed)) return { kind: 'unreadable', sentence: `“${text.trim()}” cannot be worked out.` };
  const { sign = '', number = '', unit } = shape.exec(trimmed)?.groups ?? {};
  const reading = readNumber(number, decimalMark);
  const typed = (digits: string): string =>
    `${sign === '-' ? '-' : ''}${digits}${unit === undefined ? '' : ` ${unit}`}`;
  switch (reading.kind) {
    case 'number':
      return { kind: 'read', typed: typed(reading.digits) };
    case 'either': {
      const choices = [reading.decimal, reading.grouped].map((digits) => ({
        label: digits.replace('.', decimalMark),
        typed: typed(digits),
      }));
      const [decimal, grouped] = choices.map(({ label }) => label);
      return { kind: 'either', sentence: `${number} can mean ${decimal} or ${grouped}. Which one?`, choices };
    }
    case 'unreadable':
      return { kind: 'unreadable', sentence: `“${text.trim()}” is not a number.` };
  }
}
