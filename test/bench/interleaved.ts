/** How long something is done to warm up, how often it is timed, and how long one timing takes at least; times in milliseconds. */
const warmUp = 300;
const fewestCalls = 3;
const usualRounds = 31;
const shortestTiming = 2;

/**
 * Median times of one call each, in milliseconds. All are warmed up first, so that they are compiled; then they are timed in turns, so that
 * what slows the machine for a while slows all of them; a short call is repeated until the clock is fine enough for it. The middle of all
 * rounds is taken, which neither a pause for collecting memory nor another program moves.
 */
export function interleaved<Name extends string>(
  calls: Readonly<Record<Name, () => unknown>>,
  rounds: number = usualRounds,
): Record<Name, number> {
  const names = Object.keys(calls) as Name[];
  const repeats = names.map((name) => Math.max(1, Math.ceil(shortestTiming / warmed(calls[name]))));
  const times = names.map((): number[] => []);
  for (let round = 0; round < rounds; round += 1) {
    names.forEach((name, place) => times[place]?.push(timeOf(calls[name], repeats[place] ?? 1)));
  }
  return Object.fromEntries(names.map((name, place) => [name, median(times[place] ?? [])])) as Record<Name, number>;
}

/** Calls until it is warm, and gives the time of one warm call. */
function warmed(call: () => unknown): number {
  const began = performance.now();
  for (let calls = 0; calls < fewestCalls || performance.now() - began < warmUp; calls += 1) keep(call());
  return Math.min(...Array.from({ length: fewestCalls }, () => timeOf(call, 1)));
}

export function timeOf(call: () => unknown, repeats: number): number {
  const start = performance.now();
  for (let at = 0; at < repeats; at += 1) keep(call());
  return (performance.now() - start) / repeats;
}

export function median(times: readonly number[]): number {
  return [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? NaN;
}

const kept: unknown[] = [];

/** Results are kept, the newest only, so that no call is left out as useless. */
function keep(value: unknown): void {
  kept[0] = value;
}
