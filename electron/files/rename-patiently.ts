import { hasCode } from './has-code.ts';
import type { SaveMeans } from './save-means.ts';

// Virus scanners and cloud folders hold a new file for a moment; about five seconds in all (common practice, no source).
const renameWaits = [20, 50, 100, 200, 400, 800, 1000, 1000, 1400];

/** Puts one file in the place of another; waits longer and longer while something holds either of them. */
export async function renamePatiently(from: string, to: string, { files, wait }: SaveMeans): Promise<void> {
  for (const pause of renameWaits) {
    try {
      await files.rename(from, to);
      return;
    } catch (failure) {
      if (!hasCode(failure, 'EPERM', 'EBUSY', 'EACCES')) throw failure;
      await wait(pause);
    }
  }
  await files.rename(from, to);
}
