import { basename } from 'node:path';
import { digestOf } from '../files/digest.ts';
import type { FileSystem } from '../files/file-system.ts';
import { readCase } from '../files/read-case.ts';
import type { LeftDraft } from '../host.ts';
import type { Draft } from './draft.ts';

/** Sets a draft beside its file as that is now, and touches neither. Null: the file holds just what the draft does. */
export async function leftDraft(draft: Draft, files: FileSystem): Promise<LeftDraft | null> {
  const { id, title, at, text, base } = draft;
  if (base === null) return { id, title, at, text, name: null, file: 'none', fileText: null };
  const name = basename(base.path);
  const read = await readCase(base.path, files);
  if (read.kind === 'failed') return { id, title, at, text, name, file: 'gone', fileText: null };
  if (read.text === text) return null;
  const told = { id, title, at, text, name, fileText: read.text };
  if (digestOf(read.bytes) === base.digest) return { ...told, file: 'same' };
  const modified = await files.stat(base.path).then(
    (facts) => facts.mtimeMs,
    () => 0,
  );
  return { ...told, file: modified > at ? 'newer' : 'changed' };
}
