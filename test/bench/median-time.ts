/** How often something is done to warm up, and how often it is timed. Times in milliseconds. */
const warmUp = 400;
const rounds = 41;
const shortestRound = 2;

/**
 * The median time of one call. The engine first runs for long enough to be compiled; then each round repeats the call until the clock is
 * fine enough for it, and the middle of all rounds is taken, which neither a pause for collecting memory nor another program moves.
 */
export function medianTime(call: () => unknown): number {
  const began = performance.now();
  let calls = 0;
  while (performance.now() - began < warmUp || calls < 5) {
    keep(call());
    calls += 1;
  }
  const each = (performance.now() - began) / calls;
  const repeats = Math.max(1, Math.ceil(shortestRound / each));
  const times = Array.from({ length: rounds }, () => {
    const start = performance.now();
    for (let at = 0; at < repeats; at += 1) keep(call());
    return (performance.now() - start) / repeats;
  });
  return times.sort((a, b) => a - b)[(rounds - 1) / 2] ?? NaN;
}

const kept: unknown[] = [];

/** Results are kept, the newest only, so that no call is left out as useless. */
function keep(value: unknown): void {
  kept[0] = value;
}
