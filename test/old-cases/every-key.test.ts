import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { formatVersion } from '../../src/case/schema.ts';
import { schemaKeys, spotsOf } from '../case/schema-keys.ts';

const newest = readdirSync(import.meta.dirname)
  .filter((name) => name.endsWith('.tonne'))
  .map((name) => JSON.parse(readFileSync(join(import.meta.dirname, name), 'utf8')) as { version: number })
  .filter(({ version }) => version === formatVersion);

// A key that no file here uses could be dropped by a later program without anybody noticing. Until its version is released, the newest
// file takes every new key in.
describe('the files of the newest format version', () => {
  it('use every key that the format has', () => {
    const used = new Set(newest.flatMap((content) => spotsOf(content).map(({ path }) => path)));

    expect(schemaKeys.length).toBeGreaterThan(60);
    expect(schemaKeys.map(({ path }) => path).filter((path) => !used.has(path))).toEqual([]);
  });
});
