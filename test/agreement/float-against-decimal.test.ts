import { describe, expect, test } from 'vitest';
import { evaluateDecimal } from '../../src/kernel/evaluate/decimal.ts';
import { evaluateFloat, floatProgram } from '../../src/kernel/evaluate/float.ts';
import { Failure } from '../../src/kernel/evaluate/failure.ts';
import { type RandomModel, randomFigures, randomModel } from '../support/random-figures.ts';
import { largestTerms } from '../support/largest-terms.ts';

/** The worst disagreement of a case, in parts of the largest term of each quantity, and where it is. */
function worstOf({ model, figures }: RandomModel): { readonly off: number; readonly id: string } {
  const exact = evaluateDecimal(model.graph, figures);
  const fast = evaluateFloat(floatProgram(model.graph), figures);
  const scales = largestTerms(model.graph, fast);
  let worst = { off: 0, id: '' };
  model.graph.nodes.forEach((node, at) => {
    const value = exact[at]!;
    const id = node.declaration?.id ?? `step ${String(at)}, ${node.operation.op}`;
    if (value instanceof Failure) throw new Error(`"${id}" fails`);
    const gap = value.minus(fast[at]!).abs().toNumber();
    const off = gap === 0 ? 0 : gap / scales[at]!;
    // A NaN would compare as no worse than anything.
    if (!(off <= worst.off)) worst = { off, id };
  });
  return worst;
}

// Each random structure is worked out with two sets of random figures, so that 150 of them make 300 cases.
describe('fast numbers and exact decimals', () => {
  test.each([
    { from: 9001, to: 9050 },
    { from: 9051, to: 9100 },
    { from: 9101, to: 9150 },
  ])('agree to 1e-12 of the largest term in every quantity (seeds $from to $to)', ({ from, to }) => {
    for (let seed = from; seed <= to; seed += 1) {
      const first = randomModel(seed, { lines: 2, stages: 3 });
      const second = { ...first, figures: randomFigures(first.model, seed + 500) };
      for (const { off, id } of [worstOf(first), worstOf(second)])
        expect(off, `seed ${String(seed)}: ${id}`).toBeLessThan(1e-12);
    }
  });
});
