/** Seeds are whole numbers of 32 bits; after the last comes the first. */
const seeds = 2 ** 32;

export function nextSeed(seed: number): number {
  return (seed + 1) % seeds;
}
