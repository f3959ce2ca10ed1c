import type { SaveMeans } from './save-means.ts';

/**
 * Keeps the file as it is under its name with .bak, in place of the backup before. The backup is complete at every moment too:
 * a second name for the same content where the drive has such names (which takes no room on a full disk), else a copy.
 */
export async function keepBackup(target: string, { files, randomLetters }: SaveMeans): Promise<void> {
  const second = `${target}.bak-${randomLetters()}`;
  try {
    await files.link(target, second);
  } catch {
    await files.copyFile(target, second);
  }
  try {
    await files.rename(second, `${target}.bak`);
  } finally {
    // Where the backup is this very content already, a rename leaves both names (POSIX, rename).
    await files.unlink(second).catch(() => undefined);
  }
}
