import { beforeEach, describe, expect, it } from 'vitest';
import { RangeEntry } from '../../../renderer/screens/what-if/tornado/range-entry.svelte.ts';
import { readRange } from '../../../renderer/screens/what-if/tornado/read-range.ts';
import { readShare } from '../../../renderer/screens/what-if/tornado/share-text.ts';
import { Book } from '../../../renderer/session/book.svelte.ts';
import type { Swing } from '../../../src/index.ts';
import { FakeHost } from '../fake-host.ts';
import { demonstration, EngineInThread } from '../open-demonstration.ts';

let book: Book;
const id = 'material.bctmp.price';

beforeEach(async () => {
  book = new Book(new FakeHost().asHost(), new EngineInThread(), demonstration);
  await book.start();
});

async function priceSwing(): Promise<Swing> {
  const answer = await book.session.swings({
    result: 'difference.total',
    method: 'usual range',
    share: 0.2,
    ties: 0,
  });
  const found = answer?.sensitivity.judged.find((each) => each.id === id);
  if (found === undefined) throw new Error('The price of the pulp does not reach the difference.');
  return found;
}

describe('the range of an input', () => {
  it('starts from the range in force and puts another in its place, to be undone by name', async () => {
    const entry = new RangeEntry(book, await priceSwing());
    expect([entry.low, entry.high]).toEqual(['430', '850']);

    entry.type('low', '500');
    entry.type('high', '590 €/adt');

    expect(await entry.put()).toBe(true);
    expect(book.session.history.undoes).toBe('Range of net price agreed');
    expect(await priceSwing()).toMatchObject({ low: 500, high: 590, figure: 545, flips: false });
  });

  it('goes back to what is usual', async () => {
    const entry = new RangeEntry(book, await priceSwing());
    entry.type('low', '500');
    await entry.put();

    expect(await entry.takeBack()).toBe(true);
    expect(await priceSwing()).toMatchObject({ low: 430, high: 850 });
  });

  it('says what the engine has against an end, and leaves the range as it is', async () => {
    const before = book.session.text;
    const entry = new RangeEntry(book, await priceSwing());
    entry.type('high', '1e9');
    expect(await entry.put()).toBe(false);
    expect(entry.refusal?.sentences).toEqual(['The range is given in €/adt, not in “e9”.']);

    const moisture = { ...(await priceSwing()), id: 'product.moisture', unit: '%' };
    const outside = new RangeEntry(book, moisture);
    expect(await outside.put()).toBe(false);
    expect(outside.refusal?.sentences.join(' ')).toContain('allowed is');
    expect(book.session.text).toBe(before);
  });

  it('asks which of two readings is meant, and takes the answer', async () => {
    const entry = new RangeEntry(book, await priceSwing());
    entry.type('high', '1,234');
    expect(await entry.put()).toBe(false);
    expect(entry.refusal).toMatchObject({ end: 'high', sentences: ['1,234 can mean 1.234 or 1234. Which one?'] });

    expect(await entry.choose('1234')).toBe(true);
    expect((await priceSwing()).high).toBe(1234);
  });
});

describe('reading a range', () => {
  it('takes the unit of the input behind a figure, as the model or a person writes it, and no other', () => {
    expect(readRange('0,5', '3 GJ/gross t', 'GJ/gt', ',')).toEqual({ kind: 'read', low: '0.5', high: '3' });
    expect(readRange('0,5 GJ/gt', '3', 'GJ/gt', ',')).toEqual({ kind: 'read', low: '0.5', high: '3' });
    expect(readRange('1', '2 kWh/gt', 'GJ/gt', ',')).toMatchObject({
      end: 'high',
      sentence: 'The range is given in GJ/gross t, not in “kWh/gt”.',
    });
  });

  it('wants the low end below the high end', () => {
    expect(readRange('3', '3', '%', '.')).toMatchObject({ sentence: 'The low end must lie below the high end.' });
  });
});

describe('the same per cent for all', () => {
  it('reads 1 to 100 as a share', () => {
    expect(readShare('± 12,5 %', ',')).toEqual({ kind: 'read', share: 0.125 });
    expect(readShare('100', '.')).toEqual({ kind: 'read', share: 1 });
    expect(readShare('1', '.')).toEqual({ kind: 'read', share: 0.01 });
  });

  it('refuses in words what lies outside or cannot be read', () => {
    expect(readShare('0.5', '.')).toEqual({ kind: 'refused', sentence: '0.5 is not from 1 to 100 %.' });
    expect(readShare('101', '.').kind).toBe('refused');
    expect(readShare('a fifth', '.')).toEqual({ kind: 'refused', sentence: '“a fifth” is not a number.' });
    expect(readShare('20 EUR', '.')).toEqual({ kind: 'refused', sentence: 'It is given in per cent.' });
  });
});
