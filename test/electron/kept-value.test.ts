import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { KeptValue } from '../../electron/data/kept-value.ts';
import { portableDataFolder } from '../../electron/data/portable-data-folder.ts';
import { diskFileSystem } from '../../electron/files/file-system.ts';
import { usualPreferences } from '../../electron/preferences.ts';
import { preferencesSchema } from '../../electron/preferences-schema.ts';
import { temporaryFolder } from './temporary-folder.ts';

async function kept() {
  const folder = await temporaryFolder();
  const path = join(folder, 'preferences.json');
  let letters = 0;
  const means = {
    files: diskFileSystem,
    wait: () => Promise.resolve(),
    randomLetters: () => String((letters += 1)),
  };
  return { folder, path, value: new KeptValue(path, preferencesSchema, usualPreferences, means) };
}

describe('a value in the data folder', () => {
  it('is the usual one before it was ever kept', async () => {
    expect(await (await kept()).value.read()).toEqual(usualPreferences);
  });

  it('is read as it was written', async () => {
    const { value, folder } = await kept();
    const wanted = { ...usualPreferences, numberLocale: 'de-AT', zoom: 150 };

    await value.write(wanted);

    expect(await value.read()).toEqual(wanted);
    expect(await readdir(folder)).toEqual(['preferences.json']);
  });

  it('is the newest of those written at once', async () => {
    const { value } = await kept();

    await Promise.all([110, 125, 150, 175].map((zoom) => value.write({ ...usualPreferences, zoom })));

    expect((await value.read()).zoom).toBe(175);
  });

  it.each([
    ['half a file', '{"theme": "da'],
    ['another form', '["dark"]'],
    ['a zoom that shows nothing', JSON.stringify({ ...usualPreferences, zoom: 0 })],
    ['a locale that is none', JSON.stringify({ ...usualPreferences, numberLocale: 'x' })],
    ['a key of a later program', JSON.stringify({ ...usualPreferences, later: true })],
  ])('is the usual one where the file holds %s, which stays as it is', async (_what, text) => {
    const { value, path } = await kept();
    await writeFile(path, text);

    expect(await value.read()).toEqual(usualPreferences);
    expect(await readFile(path, 'utf8')).toBe(text);
  });
});

it('keeps the data of the portable program beside it, and of an installed one where the system says', () => {
  expect(portableDataFolder({ PORTABLE_EXECUTABLE_DIR: '/stick' })).toBe(join('/stick', 'Tonne for Tonne data'));
  expect(portableDataFolder({})).toBeNull();
});
