import { Decimal } from '../kernel/evaluate/decimal-settings.ts';

/** A part to be rounded: what lies below it on the grid, what is cut off by that, and whether it is to take that or the next step. */
interface Part {
  readonly place: number;
  readonly down: Decimal;
  readonly remainder: Decimal;
  readonly wish: 'up' | 'down' | null;
}

/**
 * Rounds parts so that they add up to the rounded whole: each is rounded down, and what is left over goes, a step at a time, to those
 * that lost most (largest remainder). Ties go to the part that stands first. Digits in, digits out. `kept` holds, for parts that face
 * an equal figure elsewhere, how that one is shown: equal figures are shown alike unless the sum forbids it, and then as many of them
 * as can be.
 */
export function roundedParts(
  parts: readonly string[],
  decimals: number,
  whole?: string,
  kept: readonly (string | null)[] = [],
): readonly string[] {
  const step = new Decimal(10).pow(-decimals);
  const exact = parts.map((part) => new Decimal(part));
  const target = (whole === undefined ? sumOf(exact) : new Decimal(whole)).toDecimalPlaces(decimals);
  const read = exact.map((part, place) => partOf(part, place, step, kept[place] ?? null));
  const missing = target
    .minus(sumOf(read.map(({ down }) => down)))
    .dividedBy(step)
    .toNumber();
  const raised = raisedOnes(read, missing);
  return read.map(({ down, place }) => down.plus(step.times(raised.get(place) ?? 0)).toFixed(decimals));
}

function partOf(exact: Decimal, place: number, step: Decimal, kept: string | null): Part {
  const down = exact.dividedBy(step).floor().times(step);
  const wish = kept === null ? null : down.equals(kept) ? 'down' : down.plus(step).equals(kept) ? 'up' : null;
  return { place, down, remainder: exact.minus(down), wish };
}

/**
 * By how many steps each part is moved. First come those that wish to go up, last those that wish to stay, and among equals the larger
 * remainder. What is whole already is moved only when all others have been, as when a whole is forced on parts that do not make it.
 */
function raisedOnes(parts: readonly Part[], missing: number): ReadonlyMap<number, number> {
  const direction = missing < 0 ? -1 : 1;
  const turn = ({ wish, remainder }: Part): number => {
    if (remainder.isZero()) return 3;
    if (direction < 0 || wish === null) return 1;
    return wish === 'up' ? 0 : 2;
  };
  const ordered = [...parts].sort(
    (a, b) => turn(a) - turn(b) || direction * b.remainder.comparedTo(a.remainder) || a.place - b.place,
  );
  const each = Math.trunc(missing / ordered.length);
  const rest = Math.abs(missing % ordered.length);
  return new Map(ordered.map(({ place }, rank) => [place, each + (rank < rest ? direction : 0)]));
}

function sumOf(parts: readonly Decimal[]): Decimal {
  return parts.reduce((sum, part) => sum.plus(part), new Decimal(0));
}

/** The difference of two rounded figures, as digits: what a reader gets who takes one from the other. */
export function shownDifference(minuend: string, subtrahend: string, decimals: number): string {
  return new Decimal(minuend).minus(subtrahend).toFixed(decimals);
}

/** Half to even; nothing never has a sign. */
export function rounded(digits: string, decimals: number): string {
  return new Decimal(digits).toDecimalPlaces(decimals).toFixed(decimals);
}

/** The digits times a power of ten, exactly. */
export function shifted(digits: string, power: number): string {
  return new Decimal(digits).times(new Decimal(10).pow(power)).toString();
}

/** Whether two results are the same but for the last of the 34 digits, in which two ways to one figure may part. */
export function areAlike(digits: string, other: string): boolean {
  if (digits === '' || other === '') return false;
  return new Decimal(digits).toSignificantDigits(30).equals(new Decimal(other).toSignificantDigits(30));
}
