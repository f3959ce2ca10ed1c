/**
 * One circle for each knot of files that import each other, shortest path first found; types count, since they knot files as well.
 * @param {ReadonlyMap<string, readonly string[]>} imports
 * @returns {string[][]} each circle names its first file again at the end
 */
export function findCycles(imports) {
  /** @type {string[][]} */
  const circles = [];
  /** @type {Set<string>} */
  const done = new Set();
  for (const file of [...imports.keys()].sort()) {
    if (done.has(file)) continue;
    const circle = shortestWayBack(file, imports);
    if (circle === undefined) continue;
    circles.push(circle);
    for (const member of circle) done.add(member);
  }
  return circles;
}

/**
 * @param {string} from
 * @param {ReadonlyMap<string, readonly string[]>} imports
 * @returns {string[] | undefined}
 */
function shortestWayBack(from, imports) {
  /** @type {Map<string, string>} */
  const cameFrom = new Map();
  const queue = [from];
  for (const file of queue) {
    for (const next of imports.get(file) ?? []) {
      if (next === from) {
        const path = [from];
        for (let step = file; step !== from; step = cameFrom.get(step) ?? from) path.push(step);
        return [from, ...path.reverse()];
      }
      if (cameFrom.has(next)) continue;
      cameFrom.set(next, file);
      queue.push(next);
    }
  }
  return undefined;
}
