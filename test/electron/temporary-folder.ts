import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';

/** A folder that lives as long as the test that asks for it. */
export async function temporaryFolder(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'tonne-'));
  onTestFinished(() => rm(folder, { recursive: true }));
  return folder;
}
