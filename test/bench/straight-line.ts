/**
 * A loop of so many multiply-adds over plain numbers, as a program written by hand for one case would do them: what an evaluation would
 * cost if nothing but the arithmetic had to be done. Each step takes the result of the one before it, as equations do.
 */
export function straightLine(steps: number): () => number {
  const factors = Float64Array.from({ length: steps }, (_, at) => 0.5 + (at % 7) / 20);
  const terms = Float64Array.from({ length: steps }, (_, at) => (at % 11) / 10);
  const results = new Float64Array(steps);
  return () => {
    let before = 1;
    for (let at = 0; at < steps; at += 1) {
      before = before * factors[at]! + terms[at]!;
      results[at] = before;
    }
    return before;
  };
}
