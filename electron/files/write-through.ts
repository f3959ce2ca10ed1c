import { digestOf } from './digest.ts';
import type { FileSystem } from './file-system.ts';

/** Writes a new file, forces it out to the disk and reads it back. What could not be written whole is removed again. */
export async function writeThrough(path: string, bytes: Uint8Array, mode: number, files: FileSystem): Promise<void> {
  const file = await files.createNew(path, mode);
  try {
    try {
      await file.writeFile(bytes);
      await file.sync();
    } finally {
      await file.close();
    }
    if (digestOf(await files.readFile(path)) !== digestOf(bytes)) throw new Error('The file reads back differently.');
  } catch (failure) {
    // Half a case must not be taken for one. Only what was made above is removed.
    await files.unlink(path).catch(() => undefined);
    throw failure;
  }
}
