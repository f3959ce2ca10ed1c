import { digestOf } from './digest.ts';
import type { FileSystem } from './file-system.ts';
import { hasCode } from './has-code.ts';

/** How a file looked when it was last read or written here. `modified` is what the drive said, 0 where it said nothing. */
export interface NotedFile {
  readonly digest: string;
  readonly modified: number;
}

export async function noteFile(path: string, digest: string, files: FileSystem): Promise<NotedFile> {
  const modified = await files.stat(path).then(
    (facts) => facts.mtimeMs,
    () => 0,
  );
  return { digest, modified };
}

/** Whether the drive gives another time for a file than when it was noted: cheap to ask, and no proof (copying tools set it). */
export async function hasMoved(path: string, noted: NotedFile, files: FileSystem): Promise<boolean> {
  return (await noteFile(path, noted.digest, files)).modified !== noted.modified;
}

/** Whether the content of a file is another than what was noted: some drives keep times to two seconds only, so this one reads. */
export async function foreignChange(
  path: string,
  digest: string,
  files: FileSystem,
): Promise<'changed' | 'gone' | null> {
  try {
    return digestOf(await files.readFile(path)) === digest ? null : 'changed';
  } catch (failure) {
    // A drive that does not answer is told about by the save itself.
    return hasCode(failure, 'ENOENT', 'ENOTDIR') ? 'gone' : null;
  }
}
