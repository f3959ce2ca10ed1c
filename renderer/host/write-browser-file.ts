import type { SaveOutcome } from '../../electron/host.ts';
import { explainBrowserFailure } from './browser-failure.ts';

/** The browser writes to a copy and puts it in place at close(), so a failure before that leaves the file as it was. */
export async function writeBrowserFile(
  handle: FileSystemFileHandle,
  content: FileSystemWriteChunkType,
): Promise<SaveOutcome> {
  try {
    const writable = await handle.createWritable();
    try {
      await writable.write(content);
      await writable.close();
    } catch (failure) {
      await writable.abort().catch(() => undefined);
      throw failure;
    }
    return { kind: 'saved', name: handle.name };
  } catch (failure) {
    const safe = 'What was saved before is untouched, and your work is still open here';
    return explainBrowserFailure(failure, `“${handle.name}” could not be saved`, safe);
  }
}
