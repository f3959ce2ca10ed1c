import { readStretch } from './read-stretch.ts';

/** Longer than this, in milliseconds, a person takes the program for hung. */
const longest = 1000;

/** Reads so many hostile files, each made from the seed and its own number, and watches from outside that the reader never hangs. */
export async function tryHostileFiles(count: number, seed: number) {
  const middle = Math.ceil(count / 2);
  const stretches = await Promise.all([readStretch(seed, 0, middle), readStretch(seed, middle, count)]);
  const slowest = stretches.map((each) => each.slowest).sort((one, other) => other.milliseconds - one.milliseconds)[0];
  const kinds = [...new Set(stretches.flatMap((each) => Object.keys(each.byKind)))].sort();
  const slow = slowest !== undefined && slowest.milliseconds > longest;
  return {
    files: count,
    refused: sum(stretches.map((each) => each.refused)),
    opened: sum(stretches.map((each) => each.opened)),
    slowest,
    byKind: Object.fromEntries(kinds.map((kind) => [kind, sum(stretches.map((each) => each.byKind[kind] ?? 0))])),
    failures: [
      ...stretches.flatMap((each) => each.failures),
      ...(slow ? [`File ${String(slowest.file)} (${slowest.kind}) took ${String(slowest.milliseconds)} ms.`] : []),
    ],
  };
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
