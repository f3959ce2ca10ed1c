import { steps } from './tape.ts';

/** One step on plain numbers. Where a loop works steps of its own it does the same arithmetic in the same order. */
export function stepValue(code: number, a: number, b: number, c: number, d: number): number {
  switch (code) {
    case steps.add:
      return a + b;
    case steps.subtract:
      return a - b;
    case steps.multiply:
      return a * b;
    case steps.divide:
      // A division by nothing is no number, whatever is divided.
      return b === 0 ? NaN : a / b;
    case steps.addThree:
      return a + b + c;
    case steps.addFour:
      return a + b + c + d;
    case steps.within:
      return a >= b && a <= c ? a : NaN;
    case steps.power:
      return realPower(a, b);
    case steps.lesser:
      return Math.min(a, b);
    case steps.greater:
      return Math.max(a, b);
    default:
      return chosen(a, b, c, d);
  }
}

function realPower(base: number, exponent: number): number {
  const result = Math.pow(base, exponent);
  return Number.isFinite(result) ? result : NaN;
}

/** Only the result taken can be no number. */
function chosen(value: number, limit: number, above: number, otherwise: number): number {
  if (Number.isNaN(value) || Number.isNaN(limit)) return NaN;
  return value > limit ? above : otherwise;
}
