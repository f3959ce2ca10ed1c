import { describe, expect, test } from 'vitest';
import { cascade } from '../../src/paper/stages/cascade.ts';
import { Dice } from '../support/dice.ts';
import { plain, valuesOf } from '../support/quantity-value.ts';
import { solveLinear } from '../support/solve-linear.ts';

interface Found {
  readonly feeds: readonly number[];
  readonly loss: number;
}

/**
 * The balance of every stage as it stands, without elimination by hand: stage 1 is fed 1, every stage is fed the rejects of the one
 * before, and the accepts of the one behind where those go back.
 */
function byEquations(rates: readonly number[], forward: readonly boolean[]): Found & { readonly product: number } {
  const matrix = rates.map((_, k) =>
    rates.map((_rate, j) => {
      if (j === k) return 1;
      if (j === k - 1) return -rates[j]!;
      return j === k + 1 && forward[j] !== true ? -(1 - rates[j]!) : 0;
    }),
  );
  const feeds = solveLinear(
    matrix,
    rates.map((_, k) => (k === 0 ? 1 : 0)),
  );
  const product = feeds.reduce(
    (sum, feed, k) => (k === 0 || forward[k] === true ? sum + (1 - rates[k]!) * feed : sum),
    0,
  );
  return { feeds, loss: rates.at(-1)! * feeds.at(-1)!, product };
}

function inClosedForm(rates: readonly number[], forward: readonly boolean[]): Found {
  const { loss, feeds } = cascade(rates.map(plain), forward);
  const [first = NaN, ...rest] = valuesOf([loss, ...feeds]);
  return { loss: first, feeds: rest };
}

describe('the closed form of a cascade', () => {
  test(
    'agrees to 1e-12 with the balance equations solved together, over 500 random cascades',
    { timeout: 30_000 },
    () => {
      const lengths = new Set<string>();
      for (let seed = 8001; seed <= 8500; seed += 1) {
        const dice = new Dice(seed);
        const rates = Array.from({ length: dice.whole(1, 5) }, () => dice.between(0.01, 0.95));
        // Directions are mixed at will; the first stage always gives to the product.
        const forward = rates.map((_, k) => k === 0 || dice.chance(0.4));

        const closed = inClosedForm(rates, forward);
        const solved = byEquations(rates, forward);

        const message = `seed ${String(seed)}: ${rates.join(', ')}, forward ${forward.join(', ')}`;
        expect(Math.abs(closed.loss / solved.loss - 1), message).toBeLessThan(1e-12);
        expect(closed.feeds.length, message).toBe(rates.length);
        closed.feeds.forEach((feed, k) => expect(Math.abs(feed / solved.feeds[k]! - 1), message).toBeLessThan(1e-12));
        // The equations themselves keep mass: what is fed is product and loss.
        expect(Math.abs(solved.product + solved.loss - 1), message).toBeLessThan(1e-12);
        lengths.add(`${String(rates.length)} ${forward.slice(1).includes(true) ? 'mixed' : 'back'}`);
      }
      // One stage has no direction to choose; two to five occur both ways.
      expect(lengths.size).toBe(9);
    },
  );

  test('agrees with the example worked by hand', () => {
    // r = 0.25, 0.3, 0.4 with feedback: 4.651163 %.
    expect(byEquations([0.25, 0.3, 0.4], [true, false, false]).loss).toBeCloseTo(0.04651163, 8);
  });
});
