import { beforeEach, describe, expect, it } from 'vitest';
import type { LeftDraft } from '../../../electron/host.ts';
import { Book } from '../../../renderer/session/book.svelte.ts';
import { FakeHost } from '../fake-host.ts';
import { demonstration, EngineInThread } from '../open-demonstration.ts';

const draft = (id: string): LeftDraft => ({
  id,
  title: 'Mill',
  name: null,
  at: 0,
  text: demonstration,
  file: 'none',
  fileText: null,
});

let host: FakeHost;
let book: Book;

beforeEach(async () => {
  host = new FakeHost();
  host.left = [draft('a'), draft('b')];
  book = new Book(host.asHost(), new EngineInThread(), demonstration);
  await book.start();
});

describe('work that an earlier run left', () => {
  it('is asked about one piece after the other', async () => {
    expect(book.leftWork.current?.id).toBe('a');
    expect(book.leftWork.waiting).toBe(2);

    await book.leftWork.throwAway(book.leftWork.current!);

    expect(host.forgotten).toEqual(['a']);
    expect(book.leftWork.current?.id).toBe('b');
  });

  it('is open as unsaved once the person goes on with it, and the other piece waits for the next start', async () => {
    await book.leftWork.goOn(book.leftWork.current!);

    expect(host.taken).toEqual(['a']);
    expect(book.file.isEdited).toBe(true);
    expect(book.leftWork.current).toBeNull();
    expect(host.forgotten).toEqual([]);
  });

  it('stays untouched when the person decides later', () => {
    book.leftWork.later();

    expect(book.leftWork.current).toBeNull();
    expect([...host.taken, ...host.forgotten]).toEqual([]);
  });
});
