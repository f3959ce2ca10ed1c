import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { diskFileSystem } from '../../electron/files/file-system.ts';
import { largestBytes, readCase } from '../../electron/files/read-case.ts';
import { diskExcept, systemError } from './failing-file-system.ts';
import { temporaryFolder } from './temporary-folder.ts';

async function reading(bytes: Uint8Array | string, files = diskFileSystem) {
  const path = join(await temporaryFolder(), 'mill.tonne');
  await writeFile(path, bytes);
  return readCase(path, files);
}

describe('reading a case', () => {
  it('gives the text', async () => {
    expect(await reading('{"name": "Übung €"}')).toMatchObject({ kind: 'read', text: '{"name": "Übung €"}' });
  });

  it('leaves out the mark that some editors put before UTF-8', async () => {
    expect(await reading('\uFEFF{}')).toMatchObject({ kind: 'read', text: '{}' });
  });

  it('takes a file of exactly 20 MB', async () => {
    expect((await reading(new Uint8Array(largestBytes).fill(32))).kind).toBe('read');
  });

  it.each([
    ['one byte over 20 MB', new Uint8Array(largestBytes + 1).fill(32), 'larger than 20 MB'],
    ['Latin-1', new Uint8Array([0x7b, 0xfc, 0x7d]), 'not a text file in the UTF-8 encoding'],
    ['UTF-16 with its mark', Buffer.from('\uFEFF{}', 'utf16le'), 'not a text file in the UTF-8 encoding'],
    ['UTF-16 without a mark', Buffer.from('{}', 'utf16le'), 'not a text file in the UTF-8 encoding'],
    ['a picture', new Uint8Array([0x89, 0x50, 0x4e, 0x47]), 'not a text file in the UTF-8 encoding'],
  ])('refuses %s', async (_what, bytes, because) => {
    const outcome = await reading(bytes);

    expect(outcome).toMatchObject({
      kind: 'failed',
      sentence: expect.stringContaining(`“mill.tonne” was not opened: it is ${because}`) as string,
    });
  });

  it('refuses a file that grows while it is read', async () => {
    const readFile = () => Promise.resolve(new Uint8Array(largestBytes + 1));

    expect(await reading('small', diskExcept({ readFile }))).toMatchObject({ kind: 'failed' });
  });

  it('refuses a folder', async () => {
    const folder = join(await temporaryFolder(), 'folder.tonne');
    await mkdir(folder);

    expect(await readCase(folder, diskFileSystem)).toMatchObject({
      kind: 'failed',
      sentence: expect.stringContaining('it is not a file') as string,
    });
  });

  it('says that a missing file is missing', async () => {
    const outcome = await readCase(join(await temporaryFolder(), 'gone.tonne'), diskFileSystem);

    expect(outcome).toEqual({
      kind: 'failed',
      sentence:
        '“gone.tonne” was not opened: the file or its folder is no longer there. Nothing was changed. Look whether it was moved or its drive disconnected.',
    });
  });

  it.each(['EACCES', 'EPERM', 'EBUSY', 'EIO', 'EUNHEARD'])(
    'turns %s into a sentence without its code or the path',
    async (code) => {
      const outcome = await reading('text', diskExcept({ readFile: () => Promise.reject(systemError(code)) }));

      const sentence = outcome.kind === 'failed' ? outcome.sentence : '';
      expect(sentence).toMatch(/^“mill\.tonne” was not opened: .+\. Nothing was changed\. .+\.$/);
      expect(sentence).not.toContain(code);
      expect(sentence).not.toMatch(/[/\\]|Error| at /);
    },
  );
});
