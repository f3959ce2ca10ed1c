import { createHash } from 'node:crypto';
import { basename, dirname, extname, join } from 'node:path';
import type { FileSystem } from './file-system.ts';

/** What a save needs of the world besides the disk. */
export interface SaveMeans {
  readonly files: FileSystem;
  readonly wait: (milliseconds: number) => Promise<void>;
  /** Letters that no other save will use. */
  readonly randomLetters: () => string;
}

/** `kept` is the whole work under another name in the same folder, when it got that far. */
export type SaveResult =
  { readonly kind: 'saved' } | { readonly kind: 'failed'; readonly failure: unknown; readonly kept: string | null };

export function digestOf(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}

// Virus scanners and cloud folders hold a new file for a moment; about five seconds in all (common practice, no source).
const renameWaits = [20, 50, 100, 200, 400, 800, 1000, 1000, 1400];
const passing = new Set(['EPERM', 'EBUSY', 'EACCES']);

async function renamePatiently(from: string, to: string, { files, wait }: SaveMeans): Promise<void> {
  for (const pause of renameWaits) {
    try {
      await files.rename(from, to);
      return;
    } catch (failure) {
      if (!(failure instanceof Error && 'code' in failure && passing.has(String(failure.code)))) throw failure;
      await wait(pause);
    }
  }
  await files.rename(from, to);
}

async function writeThrough(path: string, bytes: Uint8Array, mode: number, files: FileSystem): Promise<void> {
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

// The rename itself is safe on the disk only once the folder is; Windows opens no folders, and some network drives sync none.
async function syncFolder(folder: string, files: FileSystem): Promise<void> {
  try {
    const opened = await files.openFolder(folder);
    await opened.sync().finally(() => opened.close());
  } catch {
    // The file itself is complete and in place either way.
  }
}

/** The file a save really replaces: through a link, so that the link stays one. A new file is itself. */
async function existingTarget(path: string, files: FileSystem): Promise<{ target: string; mode: number | null }> {
  try {
    const target = await files.realpath(path);
    return { target, mode: (await files.stat(target)).mode };
  } catch (failure) {
    if (failure instanceof Error && 'code' in failure && failure.code === 'ENOENT') return { target: path, mode: null };
    throw failure;
  }
}

/**
 * Replaces a file so that at every moment either the old or the new text is whole on the disk: written beside it under another
 * name, forced out, read back, the old one copied to .bak, and only then renamed into place.
 */
export async function saveAtomically(path: string, bytes: Uint8Array, means: SaveMeans): Promise<SaveResult> {
  const { files } = means;
  let kept: string | null = null;
  try {
    const { target, mode } = await existingTarget(path, files);
    // A rename would replace even a file that its owner has protected.
    if (mode !== null) await files.checkWritable(target);
    const extension = extname(target);
    const beside = `${basename(target, extension)}.unsaved-${means.randomLetters()}${extension}`;
    const temporary = join(dirname(target), beside);
    await writeThrough(temporary, bytes, mode ?? 0o666, files);
    kept = beside;
    if (mode !== null) await files.copyFile(target, `${target}.bak`);
    await renamePatiently(temporary, target, means);
    await syncFolder(dirname(target), files);
    return { kind: 'saved' };
  } catch (failure) {
    return { kind: 'failed', failure, kept };
  }
}
