import { readdir } from 'node:fs/promises';
import { describe, expect, it } from 'vitest';
import { diskExcept, diskWhereNewFiles, systemError } from './failing-file-system.ts';
import { draftDesk, work } from './draft-desk.ts';

describe('the unsaved work of a window', () => {
  it('is on the disk once it is kept, and gone once nothing is unsaved', async () => {
    const { openWindow, folder } = await draftDesk();
    const draft = openWindow();

    expect(await draft.keep(work('one'))).toEqual({ kind: 'kept' });
    expect(await folder.readAll()).toEqual([{ id: draft.id, ...work('one') }]);

    expect(await draft.keep(null)).toEqual({ kind: 'kept' });
    expect(await folder.readAll()).toEqual([]);
  });

  it('is the newest of what came while the disk was busy', async () => {
    const { openWindow, folder } = await draftDesk();
    const draft = openWindow();

    await Promise.all(['one', 'two', 'three'].map((text) => draft.keep(work(text))));

    expect((await folder.readAll()).map(({ text }) => text)).toEqual(['three']);
  });

  it('goes with a save only when no edit came after it', async () => {
    const { openWindow, folder } = await draftDesk();
    const draft = openWindow();
    await draft.keep(work('one'));
    const asked = draft.asked;
    await draft.keep(work('two'));

    await draft.saved(asked);
    expect((await folder.readAll()).map(({ text }) => text)).toEqual(['two']);

    await draft.saved(draft.asked);
    expect(await folder.readAll()).toEqual([]);
  });

  it('is not kept again after the window was ended by the person', async () => {
    const { openWindow, folder } = await draftDesk();
    const draft = openWindow();
    await draft.keep(work('one'));

    await draft.end();
    await draft.keep(work('a late word of the screen'));

    expect(await folder.readAll()).toEqual([]);
  });

  it('stays when its screen dies, while the window goes on under another name', async () => {
    const { openWindow, folder } = await draftDesk();
    const draft = openWindow();
    await draft.keep(work('before'));

    draft.leaveBehind();
    await draft.keep(work('after'));

    expect((await folder.readAll()).map(({ text }) => text).sort()).toEqual(['after', 'before']);
  });

  it.each([
    ['ENOSPC', 'the disk is full'],
    ['EROFS', 'its drive can only be read'],
  ])('that cannot be kept (%s) is said so, and what was kept before stays whole', async (code, because) => {
    let isFull = false;
    const full = diskWhereNewFiles('writeFile', code);
    const files = diskExcept({
      createNew: (path, mode) => (isFull ? full : diskExcept({})).createNew(path, mode),
    });
    const { openWindow, folder, path } = await draftDesk(files);
    const draft = openWindow();
    await draft.keep(work('one'));
    isFull = true;

    expect(await draft.keep(work('two'))).toMatchObject({
      kind: 'failed',
      sentence: expect.stringContaining(because) as string,
    });

    expect((await folder.readAll()).map(({ text }) => text)).toEqual(['one']);
    expect(await readdir(path)).toHaveLength(1);
  });

  it('that cannot be taken away is said so', async () => {
    const { openWindow } = await draftDesk(diskExcept({ unlink: () => Promise.reject(systemError('EBUSY')) }));

    expect((await openWindow().keep(null)).kind).toBe('failed');
  });
});
