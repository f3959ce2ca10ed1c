// The two multipliers as halves of 16 bits, so that every partial product fits a 32-bit multiplication.
const firstHigh = 0xd251;
const firstLow = 0x1f53;
const secondHigh = 0xcd9e;
const secondLow = 0x8d57;
const firstMultiplier = 0xd2511f53 | 0;
const secondMultiplier = 0xcd9e8d57 | 0;
// The key moves on by the golden ratio and by the square root of three less one, both as 32-bit fractions.
const firstStep = 0x9e3779b9 | 0;
const secondStep = 0xbb67ae85 | 0;
const rounds = 10;

/**
 * Philox4x32-10: turns a counter of four 32-bit words and a key of two into four random 32-bit words, and keeps no state, so any place
 * of any stream is reached at once. Only the low 32 bits of an argument count. Writes `out[0]` to `out[3]`.
 * Source: Salmon, Moraes, Dror and Shaw, "Parallel random numbers: as easy as 1, 2, 3", Proceedings of SC11, 2011, section 3.3.
 */
export function philox(
  counter0: number,
  counter1: number,
  counter2: number,
  counter3: number,
  key0: number,
  key1: number,
  out: Uint32Array,
): void {
  let [word0, word1, word2, word3] = [counter0 | 0, counter1 | 0, counter2 | 0, counter3 | 0];
  let [left, right] = [key0 | 0, key1 | 0];
  for (let round = 0; round < rounds; round += 1) {
    const high0 = highWord(firstHigh, firstLow, word0);
    const low0 = Math.imul(firstMultiplier, word0);
    const high1 = highWord(secondHigh, secondLow, word2);
    const low1 = Math.imul(secondMultiplier, word2);
    word0 = high1 ^ word1 ^ left;
    word1 = low1;
    word2 = high0 ^ word3 ^ right;
    word3 = low0;
    left = (left + firstStep) | 0;
    right = (right + secondStep) | 0;
  }
  out[0] = word0;
  out[1] = word1;
  out[2] = word2;
  out[3] = word3;
}

/**
 * The upper 32 bits of the 64-bit product of two unsigned words. No partial product with what it carries passes 32 bits, for
 * 65535 x 65535 + 65535 = 2^32 - 65536.
 */
function highWord(high: number, low: number, word: number): number {
  const wordLow = word & 0xffff;
  const wordHigh = word >>> 16;
  const first = (Math.imul(high, wordLow) + (Math.imul(low, wordLow) >>> 16)) | 0;
  const second = (Math.imul(low, wordHigh) + (first & 0xffff)) | 0;
  return (Math.imul(high, wordHigh) + (first >>> 16) + (second >>> 16)) | 0;
}
