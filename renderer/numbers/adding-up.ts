/**
 * Rounds parts so that they add up to the rounded whole: each is rounded down, and what is left goes a step at a time to those that
 * lost most. Parts that cannot be worked out stay so, and then every part is rounded by itself.
 */
export function addingUp(parts: readonly number[], whole: number, decimals: number): readonly number[] {
  const step = 10 ** decimals;
  // What is lost to binary fractions must not push a whole figure below itself.
  const scaled = parts.map((part) => Number((part * step).toPrecision(12)));
  if (![...scaled, whole].every(Number.isFinite)) return scaled.map((part) => Math.round(part) / step);
  const down = scaled.map(Math.floor);
  const missing = Math.round(Number((whole * step).toPrecision(12))) - down.reduce((sum, part) => sum + part, 0);
  const byLoss = scaled
    .map((part, place) => ({ place, loss: part - Math.floor(part) }))
    .filter(({ loss }) => loss > 0)
    .sort((one, other) => other.loss - one.loss || one.place - other.place);
  const raised = new Set(byLoss.slice(0, Math.max(0, missing)).map(({ place }) => place));
  return down.map((part, place) => (part + (raised.has(place) ? 1 : 0)) / step);
}

/** The difference of two figures as shown, without the dust of binary fractions. */
export function shownLess(figure: number, other: number, decimals: number): number {
  return Number((figure - other).toFixed(decimals));
}
