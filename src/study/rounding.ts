import { Decimal } from '../kernel/evaluate/decimal-settings.ts';

/**
 * Rounds parts so that they add up to the rounded whole: each is rounded down, and what is left over goes, a unit at a time, to those
 * that lost most (largest remainder). Ties go to the part that stands first. Digits in, digits out.
 */
export function roundedParts(parts: readonly string[], decimals: number, whole?: string): readonly string[] {
  const step = new Decimal(10).pow(-decimals);
  const exact = parts.map((part) => new Decimal(part));
  const target = whole === undefined ? sumOf(exact) : new Decimal(whole);
  const down = exact.map((part) => part.dividedBy(step).floor().times(step));
  const missing = target
    .toDecimalPlaces(decimals, Decimal.ROUND_HALF_EVEN)
    .minus(sumOf(down))
    .dividedBy(step)
    .toNumber();
  const lost = exact.map((part, place) => ({ place, remainder: part.minus(down[place] ?? 0) }));
  lost.sort((a, b) => b.remainder.comparedTo(a.remainder) || a.place - b.place);
  const raised = new Map<number, number>();
  for (let each = 0; each < missing && lost.length > 0; each += 1) {
    const place = lost[each % lost.length]?.place ?? 0;
    raised.set(place, (raised.get(place) ?? 0) + 1);
  }
  return down.map((part, place) => part.plus(step.times(raised.get(place) ?? 0)).toFixed(decimals));
}

function sumOf(parts: readonly Decimal[]): Decimal {
  return parts.reduce((sum, part) => sum.plus(part), new Decimal(0));
}

/** The difference of two rounded figures, as digits: what a reader gets who takes one from the other. */
export function shownDifference(minuend: string, subtrahend: string, decimals: number): string {
  return new Decimal(minuend).minus(subtrahend).toFixed(decimals);
}

export function rounded(digits: string, decimals: number): string {
  return new Decimal(digits).toFixed(decimals, Decimal.ROUND_HALF_EVEN);
}

/** The digits times a power of ten, exactly. */
export function shifted(digits: string, power: number): string {
  return new Decimal(digits).times(new Decimal(10).pow(power)).toString();
}
