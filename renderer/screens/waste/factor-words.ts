import type { FactorUsed } from '../../../src/index.ts';
import type { NumberStyle } from '../../numbers/number-style.ts';

/** "56.1 kg CO2e/GJ", or how many there are. */
export function factorWords(factors: readonly FactorUsed[], numbers: NumberStyle): string {
  const [only, another] = factors;
  if (only === undefined) return '';
  return another === undefined
    ? `${numbers.digits(only.value)}\u00a0${numbers.unit(only.unit)}`
    : `${String(factors.length)} factors`;
}

/** "2024", "2006–2025", "no year". */
export function yearWords(factors: readonly FactorUsed[]): string {
  const years = factors.flatMap(({ year }) => (year === '' ? [] : [year])).sort();
  const [first, last] = [years[0], years.at(-1)];
  if (first === undefined || last === undefined) return factors.length === 0 ? '' : 'no year';
  return first === last ? first : `${first}\u2013${last}`;
}

export function boundaryWords(factors: readonly FactorUsed[]): string {
  const boundaries = [...new Set(factors.map(({ boundary }) => boundary))];
  return boundaries.length > 1 ? `${String(boundaries.length)} boundaries` : (boundaries[0] ?? '');
}

export function isToVerify({ status }: FactorUsed): boolean {
  return status === 'memory';
}
