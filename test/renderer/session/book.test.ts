import { beforeEach, describe, expect, it } from 'vitest';
import { Entry } from '../../../renderer/fields/entry.svelte.ts';
import { Book } from '../../../renderer/session/book.svelte.ts';
import type { InputView } from '../../../src/index.ts';
import { FakeHost } from '../fake-host.ts';
import { demonstration, EngineInThread } from '../open-demonstration.ts';

const price = 'material.mixed.price';
let host: FakeHost;
let book: Book;
let entry: Entry;

function inForce(): InputView {
  const input = book.session.spread?.inputs[price];
  if (input === undefined) throw new Error(`The demonstration has no ${price}.`);
  return input;
}

beforeEach(async () => {
  host = new FakeHost();
  book = new Book(host.asHost(), new EngineInThread(), demonstration);
  await book.start();
  entry = new Entry(book, inForce);
});

describe('a figure being typed', () => {
  it('is in force once it is committed', async () => {
    entry.type('137.50');
    expect(inForce().value).not.toBe('137.50');

    expect(await entry.commit()).toBe(true);

    expect(inForce().value).toBe('137.50');
    expect(entry.isPending).toBe(false);
  });

  it('gives way to the figure in force when it is taken back', () => {
    const before = entry.text;
    entry.type('137.50');
    entry.revert();

    expect(entry.text).toBe(before);
  });

  it('stays as typed when it cannot be read, while the last good figure stays in force', async () => {
    const before = inForce().value;
    entry.type('cheap');

    expect(await entry.commit()).toBe(false);

    expect(entry.text).toBe('cheap');
    expect(entry.doubt?.sentences).toEqual(['“cheap” is not a number.']);
    expect(inForce().value).toBe(before);
  });

  it('waits for an answer where it can be read in two ways', async () => {
    entry.type('1,234');
    await entry.commit();
    expect(entry.doubt?.choices.map(({ label }) => label)).toEqual(['1.234', '1234']);

    await entry.choose('1234');
    expect(inForce().value).toBe('1234');
    expect(entry.doubt).toBeNull();
  });

  it('tells what arithmetic comes to while it is typed', () => {
    entry.type('68+4.50');

    expect(entry.result).toBe('= 72.50');
  });

  it('goes into the file when one saves without leaving the slot', async () => {
    entry.type('137.50');

    await book.do('save');

    expect(host.disk.get('mill.tonne')).toContain('137.50');
  });

  it('keeps the case from being saved while it cannot be read', async () => {
    entry.type('cheap');

    await book.do('save');

    expect(host.disk.size).toBe(0);
  });

  it('is what undo takes back first', async () => {
    await book.session.change(price, '120');
    entry.type('137.50');

    await book.do('undo');
    expect(entry.isPending).toBe(false);
    expect(inForce().value).toBe('120');

    await book.do('undo');
    expect(inForce().value).not.toBe('120');
  });
});
