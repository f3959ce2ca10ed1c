import { basename } from 'node:path';
import { reasonOf } from './failure-reason.ts';
import type { FileSystem } from './file-system.ts';

/** Far above any case, whose thousands of lines stay below 1 MB, and small enough to read at once. Also the limit of a save. */
export const largestBytes = 20 * 1024 * 1024;

export type ReadCase =
  | { readonly kind: 'read'; readonly bytes: Uint8Array; readonly text: string }
  | { readonly kind: 'failed'; readonly sentence: string };

/** The text of UTF-8 bytes without their mark, or null. NUL gives away text in two-byte encodings, which can pass as UTF-8. */
function textOf(bytes: Uint8Array): string | null {
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return text.includes('\u0000') ? null : text;
  } catch {
    return null;
  }
}

export async function readCase(path: string, files: FileSystem): Promise<ReadCase> {
  const refuse = (because: string, next: string): ReadCase => ({
    kind: 'failed',
    sentence: `“${basename(path)}” was not opened: ${because}. Nothing was changed. ${next}.`,
  });
  const tooLarge = (): ReadCase => refuse('it is larger than 20 MB, which no case is', 'Choose another file');
  try {
    const facts = await files.stat(path);
    // A device or a pipe could be read for ever.
    if (!facts.isFile()) return refuse('it is not a file', 'Choose a file that this program saved');
    if (facts.size > largestBytes) return tooLarge();
    const bytes = await files.readFile(path);
    // It may have grown since it was measured.
    if (bytes.byteLength > largestBytes) return tooLarge();
    const text = textOf(bytes);
    if (text !== null) return { kind: 'read', bytes, text };
    return refuse('it is not a text file in the UTF-8 encoding', 'Choose a file that this program saved');
  } catch (failure) {
    const { because, next } = reasonOf(failure);
    return refuse(because, next);
  }
}
