import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { readCounts, tellCounts } from '../../build/lib/vitest-counts.mjs';

let folder: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'counts-'));
});

afterEach(() => {
  rmSync(folder, { recursive: true });
});

function report(testResults: readonly unknown[]): string {
  const path = join(folder, 'report.json');
  writeFileSync(path, JSON.stringify({ testResults }));
  return path;
}

it('adds up the tests of all files', () => {
  const path = report([
    { status: 'passed', assertionResults: [{ status: 'passed' }, { status: 'passed' }] },
    { status: 'failed', assertionResults: [{ status: 'passed' }, { status: 'failed' }] },
    { status: 'passed', assertionResults: [{ status: 'pending' }, { status: 'todo' }] },
  ]);
  expect(readCounts(path)).toEqual({ passed: 3, failed: 1, skipped: 2 });
});

it('counts a file that could not be loaded as one failure', () => {
  const path = report([{ status: 'failed', assertionResults: [] }]);
  expect(readCounts(path)).toEqual({ passed: 0, failed: 1, skipped: 0 });
});

it('knows no counts where the run left no report', () => {
  expect(readCounts(join(folder, 'missing.json'))).toBeUndefined();
});

it('speaks of skipped tests only when there are any', () => {
  expect(tellCounts({ passed: 3, failed: 0, skipped: 0 })).toBe('3 passed, 0 failed');
  expect(tellCounts({ passed: 3, failed: 1, skipped: 2 })).toBe('3 passed, 1 failed, 2 skipped');
});
