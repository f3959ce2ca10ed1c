import type { Limit } from '../../case/what-if.ts';
import { compileTape } from '../../kernel/tape/compile.ts';
import { runTape } from '../../kernel/tape/run.ts';
import { freshSlots, resultSlot } from '../../kernel/tape/tape.ts';
import type { OpenCase } from '../open-case.ts';
import { shareMove } from './recovered-share.ts';
import { type WatchedLimit, isKept, watchedLimits, yearIds } from './watched-limits.ts';

/** How far the recovered share of a route can go. Shares of the dry fresh stock, 0 to 1. */
export interface LargestShare {
  readonly route: string;
  readonly now: number;
  /** The largest share that keeps all limits; null where none does. */
  readonly largest: number | null;
  /** Limits that the next larger share would break; where none keeps all, those broken with the fewest others. None at the whole. */
  readonly binding: readonly Limit[];
}

const scanned = 400;
const halvings = 60;

/**
 * The largest recovered share of a route that keeps every limit on it, and which of them binds. The share is scanned from the whole
 * downwards in 400 steps and narrowed to the last bit: limits that are kept only within less than a step of the scan can be missed. Null where
 * nothing can give way: a route of recovered lines only, or of virgin lines only.
 */
export function largestShare(
  open: OpenCase,
  routeId: string,
  counts: (limit: Limit) => boolean = () => true,
): LargestShare | null {
  const route = open.content.routes.find(({ id }) => id === routeId);
  const watched = watchedLimits(open).filter((each) => each.route === routeId && counts(each.limit));
  if (route === undefined) return null;
  const tape = compileTape(open.model.graph, [...new Set([...watched.map(({ resultId }) => resultId), ...yearIds])]);
  const values = freshSlots(tape);
  const move = shareMove(tape, values, route, open.content.materials);
  if (move === null) return null;
  const [tonnes, hours] = yearIds.map((id) => resultSlot(tape, id));
  const broken = (share: number): readonly WatchedLimit[] => {
    move.set(values, share);
    runTape(tape, values);
    return watched.filter(({ limit, resultId, reading }) => {
      const result = values[resultSlot(tape, resultId)] ?? NaN;
      return !isKept(limit, reading(result, values[tonnes ?? 0] ?? NaN, values[hours ?? 0] ?? NaN));
    });
  };
  const found = largestKept((share) => broken(share).length === 0);
  const beyond = found === null ? fewestBroken(broken) : found.beyond === null ? [] : broken(found.beyond);
  return { route: routeId, now: move.now, largest: found?.kept ?? null, binding: beyond.map(({ limit }) => limit) };
}

/** The largest share that holds, and the next above it that does not, if there is one. */
function largestKept(holds: (share: number) => boolean): { kept: number; beyond: number | null } | null {
  let beyond: number | null = null;
  for (let step = scanned; step >= 0; step -= 1) {
    const share = step / scanned;
    if (!holds(share)) {
      beyond = share;
      continue;
    }
    return beyond === null ? { kept: share, beyond: null } : narrowed(holds, share, beyond);
  }
  return null;
}

function narrowed(holds: (share: number) => boolean, from: number, to: number): { kept: number; beyond: number } {
  let [kept, beyond] = [from, to];
  for (let step = 0; step < halvings; step += 1) {
    const middle = kept + (beyond - kept) / 2;
    if (middle === kept || middle === beyond) break;
    if (holds(middle)) kept = middle;
    else beyond = middle;
  }
  return { kept, beyond };
}

function fewestBroken(broken: (share: number) => readonly WatchedLimit[]): readonly WatchedLimit[] {
  return Array.from({ length: scanned + 1 }, (_, step) => broken(step / scanned)).reduce((fewest, each) =>
    each.length < fewest.length ? each : fewest,
  );
}
