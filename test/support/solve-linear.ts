/** Solves a small dense system by elimination with row exchange; a singular one is an error of the test. */
export function solveLinear(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
  const rows = matrix.map((row, at) => [...row, right[at] ?? 0]);
  const size = rows.length;
  for (let column = 0; column < size; column += 1) {
    const best = rows
      .map((row, at) => ({ at, size: at < column ? -1 : Math.abs(row[column]!) }))
      .reduce((most, each) => (each.size > most.size ? each : most));
    if (best.size <= 0) throw new Error('The system has no single solution');
    [rows[column], rows[best.at]] = [rows[best.at]!, rows[column]!];
    const pivot = rows[column]!;
    for (const row of rows.slice(column + 1)) {
      const factor = row[column]! / pivot[column]!;
      for (let at = column; at <= size; at += 1) row[at]! -= factor * pivot[at]!;
    }
  }
  const found = new Array<number>(size).fill(0);
  for (let at = size - 1; at >= 0; at -= 1) {
    const row = rows[at]!;
    const known = found.reduce((sum, value, place) => (place > at ? sum + row[place]! * value : sum), 0);
    found[at] = (row[size]! - known) / row[at]!;
  }
  return found;
}
