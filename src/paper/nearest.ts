/** Up to three of the known names that share most with a name that is not known, to say what may have been meant. */
export function nearest(name: string, known: readonly string[]): readonly string[] {
  const wanted = pairsOf(name);
  return known
    .map((each) => ({ each, likeness: likeness(wanted, pairsOf(each)) }))
    .filter(({ likeness: value }) => value > 0.45)
    .sort((a, b) => b.likeness - a.likeness)
    .slice(0, 3)
    .map(({ each }) => each);
}

function pairsOf(text: string): ReadonlySet<string> {
  const lower = text.toLowerCase();
  return new Set(Array.from({ length: Math.max(0, lower.length - 1) }, (_, at) => lower.slice(at, at + 2)));
}

/** Dice's coefficient over pairs of neighbouring letters: 1 for the same pairs, 0 for none in common. */
function likeness(a: ReadonlySet<string>, b: ReadonlySet<string>): number {
  const common = [...a].filter((pair) => b.has(pair)).length;
  return a.size + b.size === 0 ? 0 : (2 * common) / (a.size + b.size);
}
