import { basename, dirname, extname, join } from 'node:path';
import type { FileSystem } from './file-system.ts';
import { hasCode } from './has-code.ts';
import { keepBackup } from './keep-backup.ts';
import { renamePatiently } from './rename-patiently.ts';
import type { SaveMeans } from './save-means.ts';
import { syncFolder } from './sync-folder.ts';
import { writeThrough } from './write-through.ts';

/** `kept` is the whole work under another name in the same folder, when it got that far. */
export type SaveResult =
  { readonly kind: 'saved' } | { readonly kind: 'failed'; readonly failure: unknown; readonly kept: string | null };

/** The file a save really replaces: through a link, so that the link stays one. A new file is itself. */
async function existingTarget(path: string, files: FileSystem): Promise<{ target: string; mode: number | null }> {
  try {
    const target = await files.realpath(path);
    return { target, mode: (await files.stat(target)).mode };
  } catch (failure) {
    if (hasCode(failure, 'ENOENT')) return { target: path, mode: null };
    throw failure;
  }
}

/** Gives work that is whole, but could not be put in place, a name that opens with a double click. */
async function keepBeside(whole: string, target: string, { files, randomLetters }: SaveMeans): Promise<string> {
  const extension = extname(target);
  const beside = join(dirname(target), `${basename(target, extension)}.unsaved-${randomLetters()}${extension}`);
  const isFree = await files.stat(beside).then(
    () => false,
    (failure: unknown) => hasCode(failure, 'ENOENT'),
  );
  if (!isFree) return basename(whole);
  return files.rename(whole, beside).then(
    () => basename(beside),
    () => basename(whole),
  );
}

/**
 * Replaces a file so that at every moment either the old or the new text is whole on the disk: written beside it under another
 * name, forced out, read back, the old one kept as .bak, and only then renamed into place. While it is being written its name
 * ends in .part and letters, so that half a text is never taken for a case.
 */
export async function saveAtomically(path: string, bytes: Uint8Array, means: SaveMeans): Promise<SaveResult> {
  const { files } = means;
  let whole: { readonly temporary: string; readonly target: string } | null = null;
  try {
    const { target, mode } = await existingTarget(path, files);
    // A rename would replace even a file that its owner has protected.
    if (mode !== null) await files.checkWritable(target);
    const temporary = `${target}.part-${means.randomLetters()}`;
    await writeThrough(temporary, bytes, mode ?? 0o666, files);
    whole = { temporary, target };
    if (mode !== null) await keepBackup(target, means);
    await renamePatiently(temporary, target, means);
    await syncFolder(dirname(target), files);
    return { kind: 'saved' };
  } catch (failure) {
    return {
      kind: 'failed',
      failure,
      kept: whole === null ? null : await keepBeside(whole.temporary, whole.target, means),
    };
  }
}
