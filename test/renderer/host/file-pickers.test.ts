import { describe, expect, it } from 'vitest';
import { FilePickers, type PickerWindow } from '../../../renderer/host/file-pickers.ts';

/** A file of the browser: keeps what is written at close(), and fails where the test says. */
function browserFile(name: string, content: BlobPart = '', failOn?: 'createWritable' | 'write' | 'close') {
  const file = { name, content, aborted: false, lastModified: 1 };
  const failing = (step: string): Promise<void> =>
    step === failOn ? Promise.reject(new DOMException('x', 'QuotaExceededError')) : Promise.resolve();
  const handle = {
    name,
    getFile: () => Promise.resolve(new File([file.content], name, { lastModified: file.lastModified })),
    createWritable: async () => {
      await failing('createWritable');
      let written: BlobPart = '';
      return {
        write: async (given: BlobPart) => {
          await failing('write');
          written = given;
        },
        close: async () => {
          await failing('close');
          file.content = written;
          file.lastModified += 1;
        },
        abort: () => {
          file.aborted = true;
          return Promise.resolve();
        },
      };
    },
  };
  return { file, handle: handle as unknown as FileSystemFileHandle };
}

/** Pickers whose person chooses the given files in turn; null closes the picker. */
function pickers(...choices: (FileSystemFileHandle | null)[]) {
  const suggestions: string[] = [];
  const choose = (): Promise<FileSystemFileHandle> => {
    const choice = choices.shift() ?? null;
    return choice === null ? Promise.reject(new DOMException('x', 'AbortError')) : Promise.resolve(choice);
  };
  const pickerWindow: PickerWindow = {
    showOpenFilePicker: async () => [await choose()],
    showSaveFilePicker: ({ suggestedName }) => {
      suggestions.push(suggestedName);
      return choose();
    },
  };
  return { files: new FilePickers(pickerWindow), suggestions };
}

describe('the file pickers of a browser', () => {
  it('save over what another program wrote only when told to, and can read it again', async () => {
    const { file, handle } = browserFile('mill.tonne', 'old');
    const { files } = pickers(handle);
    await files.open();
    await files.save('mine', 'Mill');
    Object.assign(file, { content: 'theirs', lastModified: 99 });

    expect(await files.save('mine again', 'Mill')).toEqual({ kind: 'changed', name: 'mill.tonne' });
    expect(file.content).toBe('theirs');
    expect(await files.reload()).toEqual({ kind: 'read', name: 'mill.tonne', text: 'theirs' });

    file.lastModified = 199;
    expect((await files.saveOver('mine again', 'Mill')).kind).toBe('saved');
    expect((await files.save('and again', 'Mill')).kind).toBe('saved');
    expect(file.content).toBe('and again');
  });

  it('ask for a place again once the file is left', async () => {
    const { file, handle } = browserFile('mill.tonne', 'old');
    const { files } = pickers(handle, null);
    await files.open();

    files.leave();

    expect(await files.save('draft', 'Mill')).toEqual({ kind: 'cancelled' });
    expect(file.content).toBe('old');
  });

  it('open a file and save to it without asking again', async () => {
    const { file, handle } = browserFile('mill.tonne', 'old');
    const { files, suggestions } = pickers(handle);

    expect(await files.open()).toEqual({ kind: 'read', name: 'mill.tonne', text: 'old' });
    expect(await files.save('new', 'Mill')).toEqual({ kind: 'saved', name: 'mill.tonne' });

    expect(file.content).toBe('new');
    expect(suggestions).toEqual([]);
  });

  it('ask for a place once when nothing is open', async () => {
    const { file, handle } = browserFile('mill.tonne');
    const { files, suggestions } = pickers(handle);

    await files.save('one', 'Mill');
    await files.save('two', 'Mill');

    expect(suggestions).toEqual(['Mill.tonne']);
    expect(file.content).toBe('two');
  });

  it('do nothing when the person closes them', async () => {
    const { files } = pickers(null, null);

    expect(await files.open()).toEqual({ kind: 'cancelled' });
    expect(await files.saveAs('text', 'Mill')).toEqual({ kind: 'cancelled' });
  });

  it('never save over a file that could not be read', async () => {
    const picture = browserFile('picture.tonne', new Uint8Array([0x89, 0x50]));
    const fresh = browserFile('fresh.tonne');
    const { files } = pickers(picture.handle, fresh.handle);

    expect((await files.open()).kind).toBe('failed');
    await files.save('text', 'Mill');

    expect(picture.file.content).toEqual(new Uint8Array([0x89, 0x50]));
    expect(fresh.file.content).toBe('text');
  });

  it.each(['createWritable', 'write', 'close'] as const)(
    'leave the file as it was when %s fails, and say so',
    async (step) => {
      const { file, handle } = browserFile('mill.tonne', 'old', step);
      const { files } = pickers(handle);
      await files.open();

      expect(await files.save('new', 'Mill')).toEqual({
        kind: 'failed',
        sentence:
          '“mill.tonne” could not be saved: the disk is full. What was saved before is untouched, and your work is still open here. Make room, or choose another place with Save As.',
      });
      expect(file).toMatchObject({ content: 'old', aborted: step !== 'createWritable' });
    },
  );

  it('write a workbook without leaving the case', async () => {
    const mill = browserFile('mill.tonne');
    const workbook = browserFile('mill.xlsx');
    const { files, suggestions } = pickers(mill.handle, workbook.handle);
    await files.save('one', 'Mill');

    await files.saveWorkbook(new Uint8Array([80, 75]), 'Mill');
    await files.save('two', 'Mill');

    expect(suggestions).toEqual(['Mill.tonne', 'Mill.xlsx']);
    expect(workbook.file.content).toEqual(new Uint8Array([80, 75]));
    expect(mill.file.content).toBe('two');
  });

  it.each([
    ['a file over 20 MB', new Uint8Array(20 * 1024 * 1024 + 1).fill(32), 'larger than 20 MB'],
    ['Latin-1', new Uint8Array([0x7b, 0xfc, 0x7d]), 'not a text file'],
    ['UTF-16', new Uint8Array([0x7b, 0, 0x7d, 0]), 'not a text file'],
  ])('refuse %s', async (_what, bytes, because) => {
    const { files } = pickers(browserFile('mill.tonne', bytes).handle);

    expect(await files.open()).toMatchObject({ kind: 'failed', sentence: expect.stringContaining(because) as string });
  });
});
