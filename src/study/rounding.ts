import { Decimal } from '../kernel/evaluate/decimal-settings.ts';

/** A part to be rounded; `keep` is a rounded figure it should take if the sum allows it. */
interface Part {
  readonly exact: Decimal;
  readonly keep: Decimal | null;
}

/**
 * Rounds parts so that they add up to the rounded whole: each is rounded down, and what is left over goes, a step at a time, to those
 * that lost most (largest remainder). Ties go to the part that stands first. Digits in, digits out. `kept` holds, for parts that face
 * an equal figure elsewhere, how that one is shown: equal figures are shown alike unless the sum forbids it.
 */
export function roundedParts(
  parts: readonly string[],
  decimals: number,
  whole?: string,
  kept: readonly (string | null)[] = [],
): readonly string[] {
  const step = new Decimal(10).pow(-decimals);
  const read = parts.map((part, place): Part => {
    const keep = kept[place] ?? null;
    return { exact: new Decimal(part), keep: keep === null ? null : new Decimal(keep) };
  });
  const target = (whole === undefined ? sumOf(read.map((part) => part.exact)) : new Decimal(whole)).toDecimalPlaces(
    decimals,
  );
  const free = read.map((part) => ({ ...part, keep: null }));
  const chosen = apportioned(read, step, target) ?? apportioned(free, step, target, true) ?? [];
  return chosen.map((part) => part.toFixed(decimals));
}

/** Null where the parts that are free would have to move by a whole step or more; `force` moves them all the same. */
function apportioned(parts: readonly Part[], step: Decimal, target: Decimal, force = false): readonly Decimal[] | null {
  const down = parts.map(({ exact, keep }) => keep ?? exact.dividedBy(step).floor().times(step));
  const missing = target.minus(sumOf(down)).dividedBy(step).toNumber();
  const open = parts
    .map(({ exact, keep }, place) => ({ place, keep, remainder: exact.minus(down[place] ?? 0) }))
    .filter(({ keep, remainder }) => keep === null && (force || !remainder.isZero()))
    .sort((a, b) => b.remainder.comparedTo(a.remainder) || a.place - b.place);
  if (missing === 0) return down;
  if (missing < 0 && !force) return null;
  if (open.length === 0 || (!force && missing > open.length)) return null;
  const raised = [...down];
  for (let each = 0; each < Math.abs(missing); each += 1) {
    const place = open[missing > 0 ? each % open.length : open.length - 1 - (each % open.length)]?.place ?? 0;
    raised[place] = (raised[place] ?? new Decimal(0)).plus(step.times(Math.sign(missing)));
  }
  return raised;
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
