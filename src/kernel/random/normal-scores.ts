import { normalQuantile } from './normal.ts';
import { philox } from './philox.ts';

// Two words of 26 bits make 52; half a step more keeps the share off 0 and 1, and 52 bits and a half are exact in a double.
const wordStep = 2 ** -26;
const shareStep = 2 ** -52;
const two32 = 2 ** 32;

const block = new Uint32Array(4);

/**
 * Writes the independent standard normal scores of one trial to `out[0]` .. `out[count - 1]`. A score depends on the seed (32 bits), the
 * number of the trial (0 to 2^53) and its place alone: neither on `count` nor on the trials drawn before, so trials may be shared out
 * among workers in any way. Scores lie within 8.21 on either side, the smallest share being 2^-53.
 */
export function fillNormalScores(seed: number, trial: number, out: Float64Array, count: number): void {
  const trialHigh = Math.floor(trial / two32);
  for (let place = 0; place < count; place += 2) {
    philox(trial, trialHigh, place >>> 1, 0, seed, 0, block);
    out[place] = shareOf(block[0]!, block[1]!);
    if (place + 1 < count) out[place + 1] = shareOf(block[2]!, block[3]!);
  }
  // Shares first, scores after: one short loop each runs faster than both in one.
  for (let place = 0; place < count; place += 1) out[place] = normalQuantile(out[place]!);
}

function shareOf(upper: number, lower: number): number {
  return (upper >>> 6) * wordStep + ((lower >>> 6) + 0.5) * shareStep;
}
