import { readFile, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { digestOf } from '../../electron/files/digest.ts';
import { draftDesk, work } from './draft-desk.ts';

const digest = (text: string) => digestOf(new TextEncoder().encode(text));

/** A file as it was when work on it began, and work on it that was left. `now` is what the file holds at the next start. */
async function leftWork(now: string | null, at: number) {
  const desk = await draftDesk();
  const path = join(desk.root, 'mill.tonne');
  if (now !== null) {
    await writeFile(path, now);
    await utimes(path, new Date(5000), new Date(5000));
  }
  await desk.openWindow().keep({ ...work('edited', at), base: { path, digest: digest('as it was') } });
  desk.crash();
  return { ...desk, path };
}

describe('work that an earlier run left', () => {
  it('is nothing at the first start', async () => {
    expect(await (await draftDesk()).left.offerTo(1)).toEqual([]);
  });

  it('is offered with its time, newest first, and never that of a window that works on it', async () => {
    const { openWindow, left, crash } = await draftDesk();
    await openWindow().keep(work('older', 1000));
    await openWindow().keep(work('newer', 2000));
    crash();
    await openWindow().keep(work('in hand', 3000));

    const offered = await left.offerTo(1);

    expect(offered).toMatchObject([
      { title: 'Mill', name: null, at: 2000, text: 'newer', file: 'none', fileText: null },
      { text: 'older' },
    ]);
  });

  it.each([
    ['the file is as it was', 'as it was', 9000, { file: 'same', fileText: 'as it was' }],
    ['another program changed the file before', 'theirs', 9000, { file: 'changed', fileText: 'theirs' }],
    ['the file was saved later', 'theirs', 4000, { file: 'newer', fileText: 'theirs' }],
    ['the file is gone', null, 9000, { file: 'gone', fileText: null }],
  ])('says when %s', async (_what, now, at, told) => {
    const { left } = await leftWork(now, at);

    expect(await left.offerTo(1)).toMatchObject([{ name: 'mill.tonne', text: 'edited', ...told }]);
  });

  it('touches no file, whatever it finds', async () => {
    const { left, path } = await leftWork('theirs', 4000);

    await left.offerTo(1);

    expect(await readFile(path, 'utf8')).toBe('theirs');
  });

  it('is not asked about when the file already holds the same', async () => {
    const { left, folder } = await leftWork('edited', 4000);

    expect(await left.offerTo(1)).toEqual([]);
    expect(await folder.readAll()).toEqual([]);
  });

  it('is offered to one window only, and to the next when the screen of the first dies', async () => {
    const { openWindow, left, crash } = await draftDesk();
    await openWindow().keep(work('left'));
    crash();

    const [draft] = await left.offerTo(1);
    expect(await left.offerTo(1)).toHaveLength(1);
    expect(await left.offerTo(2)).toEqual([]);
    expect(await left.find(draft?.id ?? '', 2)).toBeNull();

    left.takeBack(1);
    expect(await left.offerTo(2)).toHaveLength(1);
  });

  it('goes only when the window it was offered to says so', async () => {
    const { openWindow, left, crash, folder } = await draftDesk();
    await openWindow().keep(work('left'));
    crash();
    const [draft] = await left.offerTo(1);
    const id = draft?.id ?? '';

    await left.forget(id, 2);
    expect(await folder.readAll()).toHaveLength(1);
    await left.forget(id, 1);
    expect(await folder.readAll()).toEqual([]);
  });

  it('passes over what is no draft, and leaves it where it is', async () => {
    const { openWindow, left, crash, path } = await draftDesk();
    await openWindow().keep(work('left'));
    crash();
    const whole = await readFile(join(path, '0000000000000001.draft'), 'utf8');
    await writeFile(join(path, 'aaaaaaaaaaaaaaaa.draft'), whole.slice(0, 20));
    await writeFile(join(path, 'bbbbbbbbbbbbbbbb.draft'), new Uint8Array([255, 0, 1]));
    // Another name than it says inside: taking it up would write elsewhere.
    await writeFile(join(path, 'cccccccccccccccc.draft'), whole);

    expect((await left.offerTo(1)).map(({ text }) => text)).toEqual(['left']);
    expect(await readFile(join(path, 'aaaaaaaaaaaaaaaa.draft'), 'utf8')).toBe(whole.slice(0, 20));
  });
});
