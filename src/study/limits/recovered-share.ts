import type { Case, Route } from '../../case/case.ts';
import { kindOfLines } from '../../case/route-kind.ts';
import { type Tape, inputPlace } from '../../kernel/tape/tape.ts';

/** How the shares of a route's lines go when its recovered share moves. */
export interface ShareMove {
  /** The recovered share in force, 0 to 1. */
  readonly now: number;
  /** Writes the shares of the lines for a recovered share into the inputs of a tape; the balancing line takes what is left. */
  readonly set: (values: Float64Array, share: number) => void;
}

// Shares that add up to the whole in theory may exceed it by the last bit, and the balancing line would be left with less than nothing.
const whole = 1 - 1e-15;

/**
 * Moves the recovered share of a route as a whole: recovered lines keep their proportions to one another, virgin lines theirs, and lines
 * of a kind that has no share yet are given equal parts of it. Null where the route has no virgin or no recovered line to give way.
 */
export function shareMove(
  tape: Tape,
  values: Float64Array,
  route: Route,
  materials: Case['materials'],
): ShareMove | null {
  const lines = route.lines.map((line) => ({ id: line.id, kind: kindOfLines([line], materials) }));
  if (new Set(lines.map(({ kind }) => kind)).size < 2) return null;
  const places = new Map(
    lines
      .filter(({ id }) => id !== route.balance)
      .map(({ id }) => [id, inputPlace(tape, `${route.id}.${id}.share`)] as const),
  );
  const shares = new Map([...places].map(([id, place]) => [id, values[place] ?? NaN]));
  shares.set(route.balance, 1 - [...shares.values()].reduce((sum, share) => sum + share, 0));
  const sumOf = (kind: string): number =>
    lines.filter((line) => line.kind === kind).reduce((sum, { id }) => sum + (shares.get(id) ?? 0), 0);
  const partOf = ({ id, kind }: (typeof lines)[number]): number => {
    const sum = sumOf(kind);
    return sum > 0 ? (shares.get(id) ?? 0) / sum : 1 / lines.filter((line) => line.kind === kind).length;
  };
  const parts = lines.flatMap((line) => {
    const place = places.get(line.id);
    return place === undefined ? [] : [{ place, part: partOf(line), kind: line.kind }];
  });
  return {
    now: sumOf('recovered'),
    set: (into, share) => {
      const recovered = Math.min(whole, share);
      for (const { place, part, kind } of parts)
        into[place] = part * (kind === 'recovered' ? recovered : whole - recovered);
    },
  };
}
