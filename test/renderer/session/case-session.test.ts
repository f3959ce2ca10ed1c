import { beforeEach, describe, expect, it } from 'vitest';
import { CaseSession } from '../../../renderer/session/case-session.svelte.ts';
import { demonstration, EngineInThread } from '../open-demonstration.ts';

const price = 'material.mixed.price';
let session: CaseSession;
const shownDifference = () => session.spread?.difference.shownPerTonne;

beforeEach(async () => {
  session = new CaseSession(new EngineInThread());
  await session.open(demonstration);
});

describe('a case on the screen', () => {
  it('answers a typed figure with new results and a changed text', async () => {
    const before = { text: session.text, difference: shownDifference() };

    expect(await session.change(price, '137.50')).toEqual([]);

    expect(session.spread?.inputs[price]).toMatchObject({ value: '137.50', touched: true });
    expect(session.text).not.toBe(before.text);
    expect(shownDifference()).not.toBe(before.difference);
  });

  it('stays as it is when a figure is refused, and says why', async () => {
    const before = session.text;

    const sentences = await session.change('product.moisture', '120 %');

    expect(sentences).toHaveLength(1);
    expect(sentences[0]).toContain('120');
    expect(session.text).toBe(before);
    expect(session.history.undoes).toBeNull();
  });

  it('stays as it is when another case is refused', async () => {
    const before = session.text;

    expect(await session.open('{"format":"tonne"}')).not.toEqual([]);

    expect(session.text).toBe(before);
    expect(session.sitting).toBe(1);
  });

  it('goes back to the very same text with undo, and forth with redo', async () => {
    const first = session.text;
    await session.change(price, '137.50');
    const second = session.text;

    await session.undo();
    expect(session.text).toBe(first);

    await session.redo();
    expect(session.text).toBe(second);
  });

  it('keeps edits in order when they come faster than answers', async () => {
    const changes = ['110', '120', '130'].map((typed) => session.change(price, typed));
    await Promise.all(changes);

    expect(session.spread?.inputs[price]?.value).toBe('130');
    await session.undo();
    expect(session.spread?.inputs[price]?.value).toBe('120');
  });

  it('does not record an edit that changes nothing', async () => {
    await session.change(price, '137.50');
    await session.change(price, '137.50');
    await session.undo();

    expect(session.history.undoes).toBeNull();
  });

  it('forgets the edits and puts the slip away when another case is opened', async () => {
    await session.change(price, '137.50');
    await session.working.show('difference.total');

    await session.open(demonstration);

    expect(session.history.undoes).toBeNull();
    expect(session.working.id).toBeNull();
  });

  it('works the explained figure out anew after an edit', async () => {
    await session.working.show('difference.total');
    const before = session.working.explanation?.exact;

    await session.change(price, '137.50');

    expect(session.working.explanation?.exact).not.toBe(before);
  });

  it('goes back to a default and counts it as an edit', async () => {
    const usual = session.spread?.inputs[price]?.usual;

    await session.restore(price);

    expect(session.spread?.inputs[price]).toMatchObject({ value: usual, touched: false });
    await session.undo();
    expect(session.spread?.inputs[price]?.touched).toBe(true);
  });

  it('tells a fault of the program as such, and can go on', async () => {
    const faulty = new CaseSession({
      ask: () => Promise.reject(new Error('lost a tonne')),
      askNewest: () => Promise.reject(new Error('lost a tonne')),
    });

    await faulty.open(demonstration);
    expect(faulty.fault).toBe('lost a tonne');

    faulty.forgetFault();
    expect(faulty.fault).toBeNull();
    expect(faulty.isWaiting).toBe(false);
  });
});
