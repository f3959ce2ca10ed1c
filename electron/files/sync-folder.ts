import type { FileSystem } from './file-system.ts';

/** A rename is safe on the disk only once its folder is; Windows opens no folders, and some network drives sync none. */
export async function syncFolder(folder: string, files: FileSystem): Promise<void> {
  try {
    const opened = await files.openFolder(folder);
    await opened.sync().finally(() => opened.close());
  } catch {
    // The file itself is complete and in place either way.
  }
}
