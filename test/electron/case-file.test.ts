import { readdir, readFile, rm, stat, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { CaseFile } from '../../electron/files/case-file.ts';
import { digestOf } from '../../electron/files/digest.ts';
import { diskFileSystem, type FileSystem } from '../../electron/files/file-system.ts';
import { diskExcept, systemError } from './failing-file-system.ts';
import { temporaryFolder } from './temporary-folder.ts';

/** A window's file whose questions are answered in turn with the places given. */
function caseFile(
  places: (string | null)[],
  { files = diskFileSystem, starting = null }: { files?: FileSystem; starting?: string | null } = {},
) {
  const suggestions: string[] = [];
  const next = (): Promise<string | null> => {
    const place = places.shift();
    if (place === undefined) throw new Error('A place was asked for once too often.');
    return Promise.resolve(place);
  };
  const ask = { toOpen: next, toSave: (name: string) => (suggestions.push(name), next()) };
  const means = { files, wait: () => Promise.resolve(), randomLetters: () => 'abcd' };
  return { file: new CaseFile(ask, means, starting), suggestions };
}

describe('the file of a window', () => {
  it('is asked for once and then saved to without asking', async () => {
    const path = join(await temporaryFolder(), 'mill.tonne');
    const { file, suggestions } = caseFile([path]);

    expect(await file.save('one', 'Mill: north/south')).toEqual({ kind: 'saved', name: 'mill.tonne' });
    expect(await file.save('two', 'Mill: north/south')).toEqual({ kind: 'saved', name: 'mill.tonne' });

    expect(suggestions).toEqual(['Mill north south.tonne']);
    expect(await readFile(path, 'utf8')).toBe('two');
    expect(await readFile(`${path}.bak`, 'utf8')).toBe('one');
  });

  it('moves on with Save As', async () => {
    const folder = await temporaryFolder();
    const { file } = caseFile([join(folder, 'a.tonne'), join(folder, 'b.tonne')]);

    await file.save('one', 'a');
    await file.saveAs('two', 'a');
    await file.save('three', 'a');

    expect(await readFile(join(folder, 'a.tonne'), 'utf8')).toBe('one');
    expect(await readFile(join(folder, 'b.tonne'), 'utf8')).toBe('three');
  });

  it('stays the same when Save As is cancelled', async () => {
    const path = join(await temporaryFolder(), 'mill.tonne');
    const { file } = caseFile([path, null]);
    await file.save('one', 'mill');

    expect(await file.saveAs('two', 'mill')).toEqual({ kind: 'cancelled' });
    await file.save('three', 'mill');

    expect(await readFile(path, 'utf8')).toBe('three');
  });

  it('does not become one that could not be read', async () => {
    const folder = await temporaryFolder();
    await writeFile(join(folder, 'good.tonne'), 'good');
    await writeFile(join(folder, 'bad.tonne'), new Uint8Array([255]));
    const { file } = caseFile([join(folder, 'good.tonne'), join(folder, 'bad.tonne')]);
    await file.open();

    expect((await file.open()).kind).toBe('failed');
    await file.save('better', 'good');

    expect(await readFile(join(folder, 'good.tonne'), 'utf8')).toBe('better');
    expect(await readFile(join(folder, 'bad.tonne'))).toEqual(Buffer.from([255]));
  });

  it('starts with the case the program was started with', async () => {
    const path = join(await temporaryFolder(), 'mill.tonne');
    await writeFile(path, 'text');

    expect(await caseFile([], { starting: path }).file.readStarting()).toEqual({
      kind: 'read',
      name: 'mill.tonne',
      text: 'text',
    });
    expect(await caseFile([]).file.readStarting()).toBeNull();
  });

  it('asks for a new place when the case it was started with could not be read', async () => {
    const folder = await temporaryFolder();
    const { file } = caseFile([null], { starting: join(folder, 'gone.tonne') });

    expect((await file.readStarting())?.kind).toBe('failed');
    expect(await file.save('text', 'case')).toEqual({ kind: 'cancelled' });

    expect(await readdir(folder)).toEqual([]);
  });

  it('is not saved over when another program has changed it meanwhile, until the person says so', async () => {
    const path = join(await temporaryFolder(), 'mill.tonne');
    const { file } = caseFile([path]);
    await file.save('mine', 'mill');
    await writeFile(path, 'theirs');

    expect(await file.save('mine again', 'mill')).toEqual({ kind: 'changed', name: 'mill.tonne' });
    expect(await readFile(path, 'utf8')).toBe('theirs');

    expect(await file.saveOver('mine again', 'mill')).toEqual({ kind: 'saved', name: 'mill.tonne' });
    expect(await readFile(path, 'utf8')).toBe('mine again');
    expect(await readFile(`${path}.bak`, 'utf8')).toBe('theirs');
  });

  it('is saved where another program only touched it, whatever its time says', async () => {
    const path = join(await temporaryFolder(), 'mill.tonne');
    const { file } = caseFile([path]);
    await file.save('mine', 'mill');
    await utimes(path, new Date(2001, 0, 1), new Date(2001, 0, 1));

    expect(await file.changedMeanwhile()).toBeNull();
    expect((await file.save('mine again', 'mill')).kind).toBe('saved');
  });

  it('is known to have changed even where the drive gives the old time', async () => {
    const path = join(await temporaryFolder(), 'mill.tonne');
    const { file } = caseFile([path]);
    await file.save('mine', 'mill');
    const { atime, mtime } = await stat(path);
    await writeFile(path, 'them');
    await utimes(path, atime, mtime);

    expect(await file.save('mine again', 'mill')).toMatchObject({ kind: 'changed' });
  });

  it('is seen to have changed, or to be gone, when the window is looked at again', async () => {
    const path = join(await temporaryFolder(), 'mill.tonne');
    const { file } = caseFile([path]);
    await file.save('mine', 'mill');
    expect(await file.changedMeanwhile()).toBeNull();

    await writeFile(path, 'theirs');
    await utimes(path, new Date(2001, 0, 1), new Date(2001, 0, 1));
    expect(await file.changedMeanwhile()).toBe('changed');

    await rm(path);
    expect(await file.changedMeanwhile()).toBe('gone');
  });

  it('is read again as another program left it, and then saved to', async () => {
    const path = join(await temporaryFolder(), 'mill.tonne');
    const { file } = caseFile([path]);
    await file.save('mine', 'mill');
    await writeFile(path, 'theirs');

    expect(await file.reload()).toEqual({ kind: 'read', name: 'mill.tonne', text: 'theirs' });
    expect((await file.save('both', 'mill')).kind).toBe('saved');
  });

  it('says that it can only be read, and then saves elsewhere', async () => {
    const folder = await temporaryFolder();
    const locked = join(folder, 'locked.tonne');
    await writeFile(locked, 'locked');
    const checkWritable = (path: string) =>
      path === locked ? Promise.reject(systemError('EACCES')) : diskFileSystem.checkWritable(path);
    const { file } = caseFile([locked, join(folder, 'own.tonne')], { files: diskExcept({ checkWritable }) });

    expect(await file.open()).toEqual({ kind: 'read', name: 'locked.tonne', text: 'locked', isReadOnly: true });
    expect(await file.save('mine', 'locked')).toEqual({ kind: 'saved', name: 'own.tonne' });

    expect(await readFile(locked, 'utf8')).toBe('locked');
    expect(await readFile(join(folder, 'own.tonne'), 'utf8')).toBe('mine');
  });

  it('goes on with the file of a draft only while that is what the draft began from', async () => {
    const path = join(await temporaryFolder(), 'mill.tonne');
    await writeFile(path, 'base');
    const digest = digestOf(new TextEncoder().encode('base'));
    const { file } = caseFile([null]);

    expect(await file.adopt(path, digest)).toBe(true);
    expect(file.base).toEqual({ path, digest });
    expect((await file.save('draft', 'mill')).kind).toBe('saved');

    const late = caseFile([null]);
    expect(await late.file.adopt(path, digest)).toBe(false);
    expect(await late.file.save('draft', 'mill')).toEqual({ kind: 'cancelled' });
    expect(await readFile(path, 'utf8')).toBe('draft');
  });

  it.each(['日本語 – Übung.tonne', `${'n'.repeat(200)}.tonne`, "it's 100% & more.tonne"])(
    'may have the name %s',
    async (name) => {
      const path = join(await temporaryFolder(), name);
      const { file } = caseFile([path]);

      expect(await file.save('one', 'mill')).toEqual({ kind: 'saved', name });
      expect(await file.save('two', 'mill')).toEqual({ kind: 'saved', name });

      expect(await readFile(path, 'utf8')).toBe('two');
    },
  );

  it('is made again when it was deleted meanwhile', async () => {
    const path = join(await temporaryFolder(), 'mill.tonne');
    const { file } = caseFile([path]);
    await file.save('one', 'mill');
    await rm(path);

    expect((await file.save('two', 'mill')).kind).toBe('saved');
    expect(await readFile(path, 'utf8')).toBe('two');
  });

  it('takes two saves at once one after the other', async () => {
    const path = join(await temporaryFolder(), 'mill.tonne');
    const { file } = caseFile([path]);
    await file.save('one', 'mill');

    const outcomes = await Promise.all([file.save('two', 'mill'), file.save('three', 'mill')]);

    expect(outcomes.map((outcome) => outcome.kind)).toEqual(['saved', 'saved']);
    expect(await readFile(path, 'utf8')).toBe('three');
  });

  it('says where the work is when it could not be put in place', async () => {
    const path = join(await temporaryFolder(), 'mill.tonne');
    await writeFile(path, 'old');
    const held: FileSystem['rename'] = (from, to) =>
      to === path ? Promise.reject(systemError('EBUSY')) : diskFileSystem.rename(from, to);
    const { file } = caseFile([path], { files: diskExcept({ rename: held }) });

    expect(await file.saveAs('new', 'mill')).toEqual({
      kind: 'failed',
      sentence:
        'The case could not be saved to “mill.tonne”: another program is using it. What was saved before is untouched, and your work is kept beside it as “mill.unsaved-abcd.tonne”. Close it in the other program and try again.',
    });
  });

  it('writes a workbook without leaving the case', async () => {
    const folder = await temporaryFolder();
    const { file, suggestions } = caseFile([join(folder, 'mill.tonne'), join(folder, 'mill.xlsx')]);
    await file.save('one', 'mill');

    expect(await file.saveWorkbook(new Uint8Array([80, 75]), 'mill')).toEqual({ kind: 'saved', name: 'mill.xlsx' });
    await file.save('two', 'mill');

    expect(suggestions).toEqual(['mill.tonne', 'mill.xlsx']);
    expect(await readFile(join(folder, 'mill.xlsx'))).toEqual(Buffer.from([80, 75]));
    expect(await readFile(join(folder, 'mill.tonne'), 'utf8')).toBe('two');
  });

  it('refuses to save what it could not open again', async () => {
    const folder = await temporaryFolder();
    const { file } = caseFile([join(folder, 'mill.tonne')]);

    expect(await file.save('x'.repeat(20 * 1024 * 1024 + 1), 'mill')).toMatchObject({ kind: 'failed' });
    expect(await readdir(folder)).toEqual([]);
  });
});
