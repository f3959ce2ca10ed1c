import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A real drive of a few kilobytes, that can be filled and made read-only. */
export interface SmallDisk {
  readonly folder: string;
  makeReadOnly(): void;
  remove(): void;
}

/** Only the superuser of a Linux system may make one; null elsewhere. */
export function smallDisk(kilobytes: number): SmallDisk | null {
  const folder = mkdtempSync(join(tmpdir(), 'small-disk-'));
  const mount = (...words: string[]): void => void execFileSync('mount', words, { stdio: 'ignore' });
  try {
    mount('-t', 'tmpfs', '-o', `size=${String(kilobytes)}k`, 'tmpfs', folder);
  } catch {
    rmSync(folder, { recursive: true });
    return null;
  }
  return {
    folder,
    makeReadOnly: () => mount('-o', 'remount,ro', folder),
    remove: () => {
      execFileSync('umount', [folder], { stdio: 'ignore' });
      rmSync(folder, { recursive: true });
    },
  };
}
