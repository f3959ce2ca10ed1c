import { add, divide, type ExactNumber, exactNumber, multiply, plainDigits, subtract } from './exact-number.ts';
import { readNumber } from './read-number.ts';

type Operator = '+' | '-' | '×' | '÷';
interface Term {
  readonly operator: Operator;
  readonly number: ExactNumber;
}

const spellings: Readonly<Record<string, Operator>> = { '+': '+', '-': '-', '*': '×', '×': '×', '/': '÷', '÷': '÷' };
// An operator stands between two numbers; what follows the last number is left to be read as a unit, "€/kWh" for instance.
const sum = /^(?<sums>[+-]?\s*[\d.,]+(?:\s*[-+*×/÷]\s*[\d.,]+)+)(?<rest>[^\d.,].*)?$/u;

/**
 * Works out simple arithmetic such as "68+4.50" or "3 × 12", products before sums; the rest is whatever stands behind it. Null where
 * there is no arithmetic, or where a number in it can be read in two ways or not at all.
 */
export function readSum(text: string, decimalMark: string): { readonly digits: string; readonly rest: string } | null {
  const { sums, rest = '' } = sum.exec(text)?.groups ?? {};
  if (sums === undefined) return null;
  const terms = termsOf(sums, decimalMark);
  const result = terms === null ? null : total(terms);
  return result === null ? null : { digits: plainDigits(result), rest };
}

function termsOf(text: string, decimalMark: string): Term[] | null {
  const terms: Term[] = [];
  for (const [, sign = '', typed = ''] of text.matchAll(/([-+*×/÷]?)\s*([\d.,]+)\s*/gu)) {
    const reading = readNumber(typed, decimalMark);
    if (reading.kind !== 'number') return null;
    terms.push({ operator: spellings[sign] ?? '+', number: exactNumber(reading.digits) });
  }
  return terms;
}

function total(terms: readonly Term[]): ExactNumber | null {
  let sumSoFar = exactNumber('0');
  let product = exactNumber('0');
  for (const { operator, number } of terms) {
    if (operator === '+' || operator === '-') {
      sumSoFar = add(sumSoFar, product);
      product = operator === '+' ? number : subtract(exactNumber('0'), number);
      continue;
    }
    const next = operator === '×' ? multiply(product, number) : divide(product, number);
    if (next === null) return null;
    product = next;
  }
  return add(sumSoFar, product);
}
