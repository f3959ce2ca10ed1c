import { mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { isInstalled } from '../../build/lib/ensure-installed.mjs';
import { newestTime } from '../../build/lib/newest-time.mjs';

let root: string;

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'fresh-'));
});

afterEach(() => {
  rmSync(root, { recursive: true });
});

function write(path: string, text: string, seconds: number): void {
  mkdirSync(join(root, path, '..'), { recursive: true });
  writeFileSync(join(root, path), text);
  utimesSync(join(root, path), seconds, seconds);
}

describe('the newest change', () => {
  it('is that of the newest file, however deep', () => {
    write('src/a.ts', '', 1000);
    write('src/deep/er/b.ts', '', 4_000_000_000);
    expect(newestTime(join(root, 'src'))).toBe(4_000_000_000_000);
  });

  it('is seen when a file is deleted', () => {
    write('src/a.ts', '', 1000);
    write('src/b.ts', '', 1000);
    utimesSync(join(root, 'src'), 1000, 1000);
    rmSync(join(root, 'src/b.ts'));
    expect(newestTime(join(root, 'src'))).toBeGreaterThan(1_000_000);
  });

  it('is zero for what is missing', () => {
    expect(newestTime(join(root, 'src'))).toBe(0);
  });
});

describe('the installed packages', () => {
  const lock = (version: string): string =>
    JSON.stringify({
      packages: {
        '': { name: 'project' },
        'node_modules/a': { version },
        'node_modules/only-on-mac': { version: '1.0.0', optional: true },
      },
    });
  const installed = JSON.stringify({ packages: { 'node_modules/a': { version: '1.0.0' } } });

  it('are missing in a fresh checkout', () => {
    write('package-lock.json', lock('1.0.0'), 1000);
    expect(isInstalled(root)).toBe(false);
  });

  it('are trusted when they are newer than the lock file', () => {
    write('package-lock.json', lock('1.0.0'), 1000);
    write('node_modules/.package-lock.json', installed, 2000);
    expect(isInstalled(root)).toBe(true);
  });

  it('are kept when a newer lock file asks for the same', () => {
    write('package-lock.json', lock('1.0.0'), 3000);
    write('node_modules/.package-lock.json', installed, 2000);
    expect(isInstalled(root)).toBe(true);
  });

  it('are out of date when a newer lock file asks for another version', () => {
    write('package-lock.json', lock('1.0.1'), 3000);
    write('node_modules/.package-lock.json', installed, 2000);
    expect(isInstalled(root)).toBe(false);
  });
});
