import { dirname } from 'node:path';
import { renamePatiently } from './rename-patiently.ts';
import type { SaveMeans } from './save-means.ts';
import { syncFolder } from './sync-folder.ts';
import { writeThrough } from './write-through.ts';

// Preferences and drafts are the person's own business.
const ownerOnly = 0o600;

/**
 * Writes a file of the program's own data folder, so that at every moment the old or the new one is whole. Throws what the system
 * said; then the old one stands.
 */
export async function replaceFile(path: string, bytes: Uint8Array, means: SaveMeans): Promise<void> {
  const { files } = means;
  const temporary = `${path}.part-${means.randomLetters()}`;
  await files.makeFolder(dirname(path));
  await writeThrough(temporary, bytes, ownerOnly, files);
  try {
    await renamePatiently(temporary, path, means);
  } catch (failure) {
    await files.unlink(temporary).catch(() => undefined);
    throw failure;
  }
  await syncFolder(dirname(path), files);
}
