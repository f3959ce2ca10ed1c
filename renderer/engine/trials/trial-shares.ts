/** Trials are dealt out in whole blocks of the engine, so that every worker draws the blocks that one alone would. */
const blockTrials = 1024;

/** Even shares of whole blocks; the last takes what is left. Workers for whom no block is left have no share. */
export function trialShares(
  trials: number,
  workers: number,
): readonly { readonly first: number; readonly count: number }[] {
  const blocks = Math.ceil(trials / blockTrials);
  const busy = Math.min(workers, blocks);
  return Array.from({ length: busy }, (_, place) => {
    const first = Math.floor((blocks * place) / busy) * blockTrials;
    const end = Math.min(trials, Math.floor((blocks * (place + 1)) / busy) * blockTrials);
    return { first, count: end - first };
  });
}
