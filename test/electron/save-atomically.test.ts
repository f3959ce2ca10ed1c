import { chmod, readdir, readFile, stat, symlink, lstat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { diskFileSystem, type FileSystem } from '../../electron/files/file-system.ts';
import { saveAtomically } from '../../electron/files/save-atomically.ts';
import { diskExcept, diskWhereNewFiles, systemError } from './failing-file-system.ts';
import { temporaryFolder } from './temporary-folder.ts';

const encode = (text: string) => new TextEncoder().encode(text);
const beside = 'mill.unsaved-abcd.tonne';
const part = 'mill.tonne.part-abcd';

/** Refuses to put anything in the place of mill.tonne, as a program does that holds it. */
const held =
  (code: string): FileSystem['rename'] =>
  (from, to) =>
    to.endsWith('mill.tonne') ? Promise.reject(systemError(code)) : diskFileSystem.rename(from, to);

/** A folder that holds mill.tonne as it was last saved, and a save of new text over it. */
async function saving(files: FileSystem) {
  const folder = await temporaryFolder();
  const path = join(folder, 'mill.tonne');
  await writeFile(path, 'old');
  const waits: number[] = [];
  const wait = (milliseconds: number) => {
    waits.push(milliseconds);
    return Promise.resolve();
  };
  const result = await saveAtomically(path, encode('new'), { files, wait, randomLetters: () => 'abcd' });
  return { folder, path, waits, result, text: await readFile(path, 'utf8') };
}

describe('saving a case', () => {
  it('puts the new text in place and keeps the old one as .bak', async () => {
    const { folder, result, text } = await saving(diskFileSystem);

    expect(result).toEqual({ kind: 'saved' });
    expect(text).toBe('new');
    expect((await readdir(folder)).sort()).toEqual(['mill.tonne', 'mill.tonne.bak']);
    expect(await readFile(join(folder, 'mill.tonne.bak'), 'utf8')).toBe('old');
  });

  it('makes a new file without a .bak', async () => {
    const folder = await temporaryFolder();
    const means = { files: diskFileSystem, wait: () => Promise.resolve(), randomLetters: () => 'abcd' };

    expect(await saveAtomically(join(folder, 'fresh.tonne'), encode('new'), means)).toEqual({ kind: 'saved' });

    expect(await readdir(folder)).toEqual(['fresh.tonne']);
  });

  it('saves through a link and leaves it a link', async () => {
    const folder = await temporaryFolder();
    await writeFile(join(folder, 'real.tonne'), 'old');
    await symlink(join(folder, 'real.tonne'), join(folder, 'link.tonne'));
    const means = { files: diskFileSystem, wait: () => Promise.resolve(), randomLetters: () => 'abcd' };

    await saveAtomically(join(folder, 'link.tonne'), encode('new'), means);

    expect((await lstat(join(folder, 'link.tonne'))).isSymbolicLink()).toBe(true);
    expect(await readFile(join(folder, 'real.tonne'), 'utf8')).toBe('new');
  });

  it('keeps a private file private', async () => {
    const folder = await temporaryFolder();
    const path = join(folder, 'mill.tonne');
    await writeFile(path, 'old');
    await chmod(path, 0o600);
    const means = { files: diskFileSystem, wait: () => Promise.resolve(), randomLetters: () => 'abcd' };

    await saveAtomically(path, encode('new'), means);

    expect((await stat(path)).mode & 0o777).toBe(0o600);
  });

  it('forces text and folder out to the disk, the text before the rename and the folder after', async () => {
    const steps: string[] = [];
    const noting =
      (what: string, open: FileSystem['openFolder']): FileSystem['openFolder'] =>
      async (path) => {
        const file = await open(path);
        return {
          writeFile: (bytes) => file.writeFile(bytes),
          sync: () => (steps.push(`sync ${what}`), file.sync()),
          close: () => file.close(),
        };
      };
    await saving(
      diskExcept({
        createNew: (path, mode) => noting('text', () => diskFileSystem.createNew(path, mode))(path),
        openFolder: noting('folder', (path) => diskFileSystem.openFolder(path)),
        rename: (from, to) => (
          steps.push(to.endsWith('.bak') ? 'keep .bak' : 'rename'),
          diskFileSystem.rename(from, to)
        ),
      }),
    );

    expect(steps).toEqual(['sync text', 'keep .bak', 'rename', 'sync folder']);
  });

  it.each(['EPERM', 'EBUSY', 'EACCES'])(
    'waits longer and longer while the file is held (%s), then succeeds',
    async (code) => {
      let refusals = 3;
      const rename: FileSystem['rename'] = (from, to) =>
        to.endsWith('mill.tonne') && refusals-- > 0
          ? Promise.reject(systemError(code))
          : diskFileSystem.rename(from, to);

      const { result, text, waits } = await saving(diskExcept({ rename }));

      expect(result.kind).toBe('saved');
      expect(text).toBe('new');
      expect(waits).toEqual([20, 50, 100]);
    },
  );

  it('gives up on a file that stays held after about five seconds, and keeps the work beside it', async () => {
    const { folder, result, text, waits } = await saving(diskExcept({ rename: held('EBUSY') }));

    expect(result).toMatchObject({ kind: 'failed', kept: beside });
    expect(text).toBe('old');
    expect(await readFile(join(folder, beside), 'utf8')).toBe('new');
    const total = waits.reduce((sum, pause) => sum + pause, 0);
    expect(total).toBeGreaterThan(4000);
    expect(total).toBeLessThan(6000);
  });

  it('keeps earlier work that was left beside the file, and names where the new work lies', async () => {
    const folder = await temporaryFolder();
    await writeFile(join(folder, 'mill.tonne'), 'old');
    await writeFile(join(folder, beside), 'earlier work');
    const rename: FileSystem['rename'] = (from, to) =>
      to.endsWith('mill.tonne') ? Promise.reject(systemError('EROFS')) : diskFileSystem.rename(from, to);
    const means = { files: diskExcept({ rename }), wait: () => Promise.resolve(), randomLetters: () => 'abcd' };

    const result = await saveAtomically(join(folder, 'mill.tonne'), encode('new'), means);

    expect(result).toMatchObject({ kind: 'failed', kept: part });
    expect(await readFile(join(folder, part), 'utf8')).toBe('new');
    expect(await readFile(join(folder, beside), 'utf8')).toBe('earlier work');
  });

  it('does not wait for a failure that will not pass', async () => {
    const { result, waits } = await saving(diskExcept({ rename: held('EROFS') }));

    expect(result).toMatchObject({ kind: 'failed', kept: beside });
    expect(waits).toEqual([]);
  });

  it('keeps the work beside the file when the old text cannot be kept as .bak', async () => {
    const { folder, result, text } = await saving(
      diskExcept({
        link: () => Promise.reject(systemError('EPERM')),
        copyFile: () => Promise.reject(systemError('ENOSPC')),
      }),
    );

    expect(result).toMatchObject({ kind: 'failed', kept: beside });
    expect(text).toBe('old');
    expect(await readFile(join(folder, beside), 'utf8')).toBe('new');
  });

  it('copies the old text to .bak where the drive knows no second names', async () => {
    const { folder, result } = await saving(diskExcept({ link: () => Promise.reject(systemError('EPERM')) }));

    expect(result.kind).toBe('saved');
    expect(await readFile(join(folder, 'mill.tonne.bak'), 'utf8')).toBe('old');
    expect((await readdir(folder)).sort()).toEqual(['mill.tonne', 'mill.tonne.bak']);
  });

  it('keeps the version before as .bak, save after save, and nothing else', async () => {
    const folder = await temporaryFolder();
    const path = join(folder, 'mill.tonne');
    const means = { files: diskFileSystem, wait: () => Promise.resolve(), randomLetters: () => 'abcd' };

    for (const text of ['one', 'two', 'three']) await saveAtomically(path, encode(text), means);
    // A save that failed at the last step leaves .bak and the file the same content; the next save must cope with that.
    await saveAtomically(path, encode('lost'), {
      ...means,
      files: diskExcept({
        rename: (from, to) => (to === path ? Promise.reject(systemError('EROFS')) : diskFileSystem.rename(from, to)),
      }),
    });
    await saveAtomically(path, encode('four'), { ...means, randomLetters: () => 'efgh' });

    expect(await readFile(path, 'utf8')).toBe('four');
    expect(await readFile(`${path}.bak`, 'utf8')).toBe('three');
    expect((await readdir(folder)).sort()).toEqual(['mill.tonne', 'mill.tonne.bak', beside]);
  });

  it('replaces the .bak in one step, so that it is whole at every moment too', async () => {
    const folder = await temporaryFolder();
    const path = join(folder, 'mill.tonne');
    await writeFile(path, 'old');
    await writeFile(`${path}.bak`, 'older');
    const copyFile: FileSystem['copyFile'] = async (from, to) => {
      await writeFile(to, 'ol');
      throw systemError('EIO');
    };
    const files = diskExcept({ link: () => Promise.reject(systemError('EPERM')), copyFile });

    await saveAtomically(path, encode('new'), { files, wait: () => Promise.resolve(), randomLetters: () => 'abcd' });

    expect(await readFile(`${path}.bak`, 'utf8')).toBe('older');
  });

  it.each(['writeFile', 'sync', 'close'] as const)(
    'leaves the last good file alone and no half file when %s fails',
    async (step) => {
      const { folder, result, text } = await saving(diskWhereNewFiles(step, 'ENOSPC'));

      expect(result).toMatchObject({ kind: 'failed', kept: null });
      expect(text).toBe('old');
      expect(await readdir(folder)).toEqual(['mill.tonne']);
    },
  );

  it('does not put in place what reads back differently', async () => {
    const { folder, result, text } = await saving(diskExcept({ readFile: () => Promise.resolve(encode('nEw')) }));

    expect(result).toMatchObject({ kind: 'failed', kept: null });
    expect(text).toBe('old');
    expect(await readdir(folder)).toEqual(['mill.tonne']);
  });

  it('does not replace a file that is protected against writing', async () => {
    const { folder, result, text } = await saving(
      diskExcept({ checkWritable: () => Promise.reject(systemError('EACCES')) }),
    );

    expect(result).toMatchObject({ kind: 'failed', kept: null });
    expect(text).toBe('old');
    expect(await readdir(folder)).toEqual(['mill.tonne']);
  });

  it('never writes over a file that happens to have the temporary name', async () => {
    const folder = await temporaryFolder();
    await writeFile(join(folder, 'mill.tonne'), 'old');
    await writeFile(join(folder, part), 'earlier work');
    const means = { files: diskFileSystem, wait: () => Promise.resolve(), randomLetters: () => 'abcd' };

    const result = await saveAtomically(join(folder, 'mill.tonne'), encode('new'), means);

    expect(result).toMatchObject({ kind: 'failed', kept: null });
    expect(await readFile(join(folder, part), 'utf8')).toBe('earlier work');
    expect(await readFile(join(folder, 'mill.tonne'), 'utf8')).toBe('old');
  });
});
