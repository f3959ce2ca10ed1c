import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readCase } from '../../src/case/read-case.ts';
import { formatVersion } from '../../src/case/schema.ts';
import { writeCase } from '../../src/case/write-case.ts';
import { openCase } from '../../src/study/open-case.ts';

const folder = import.meta.dirname;
const files = readdirSync(folder).filter((name) => name.endsWith('.tonne'));
const textOf = (name: string): string => readFileSync(join(folder, name), 'utf8');

// Files that were saved once stay readable for ever: when the format changes, its last file joins this folder and none leaves it.
describe('case files of every format version', () => {
  it.each(Array.from({ length: formatVersion }, (_, place) => place + 1))('hold one of version %d', (version) => {
    expect(files.map((name) => (JSON.parse(textOf(name)) as { version: number }).version)).toContain(version);
  });

  it.each(files)('read: %s', (name) => {
    const outcome = readCase(textOf(name));

    expect(outcome).toMatchObject({ ok: true });
    expect(outcome.ok && readCase(writeCase(outcome.value))).toEqual(outcome);
  });

  it.each(files)('are worked out without a gap or a failure: %s', (name) => {
    const outcome = openCase(textOf(name));

    expect(outcome.ok ? outcome.value.gaps : outcome.problems).toEqual([]);
  });
});
