import { readFileSync } from 'node:fs';
import { build, type Plugin } from 'vite';
import { expect, it } from 'vitest';
import { bundles } from '../../build/bundles.mjs';
import { licencesOf } from '../../build/lib/licences-of.mjs';
import { carried, target } from '../../build/licences.mjs';
import { temporaryFolder } from '../electron/temporary-folder.ts';

it('shows the licences as the packages that are installed bring them', () => {
  expect(JSON.parse(readFileSync(target, 'utf8'))).toEqual(licencesOf(carried));
});

it('has a licence for every package', () => {
  const licences = JSON.parse(readFileSync(target, 'utf8')) as { name: string; text: string }[];

  expect(licences.filter(({ text }) => text.length < 300).map(({ name }) => name)).toEqual([]);
});

// Only the main process: building the page takes too long for a unit test, and its packages are those of package.json.
it('names every package that the main process carries', async () => {
  const seen = new Set<string>();
  const note: Plugin = {
    name: 'note packages',
    moduleParsed: ({ id }) => {
      const name = [...id.matchAll(/node_modules\/((?:@[^/]+\/)?[^/]+)/gu)].at(-1)?.[1];
      if (name !== undefined) seen.add(name);
    },
  };

  const configs = await bundles.electron.configs(await temporaryFolder());
  for (const config of configs) await build({ ...config, plugins: [note] });

  expect([...seen]).toContain('valibot');
  expect([...seen].filter((name) => !carried.includes(name))).toEqual([]);
});
