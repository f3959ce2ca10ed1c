import { beforeEach, describe, expect, it } from 'vitest';
import { NewCaseForm } from '../../../renderer/screens/new-case/new-case-form.svelte.ts';
import { Book } from '../../../renderer/session/book.svelte.ts';
import { openCase } from '../../../src/index.ts';
import { FakeHost } from '../fake-host.ts';
import { demonstration, EngineInThread } from '../open-demonstration.ts';

let book: Book;
let form: NewCaseForm;
const spread = () => form.draft.session.spread;

beforeEach(async () => {
  const host = new FakeHost().asHost();
  book = new Book(host, new EngineInThread(), demonstration);
  await book.start();
  form = new NewCaseForm(new Book(host, new EngineInThread(), ''));
  await form.open();
});

async function make(product: string): Promise<void> {
  const chosen = form.products.find((each) => each.product === product);
  if (chosen === undefined) throw new Error(`There is no product ${product}.`);
  await form.make(chosen);
}

describe('a new case', () => {
  it('waits for the tonnes a year', async () => {
    await make('Newsprint');
    expect(form.isStarted).toBe(false);

    await form.give('tonnes', '120000');
    expect(form.isStarted).toBe(true);
    expect(spread()?.inputs['product.tonnes']?.value).toBe('120000');
  });

  it.each(['a lot', '1,234', '-5', '120000 t'])('does not start from %s tonnes a year, and says why', async (typed) => {
    await form.give('tonnes', typed);

    expect(form.isStarted).toBe(false);
    expect(form.sentences).toHaveLength(1);
    expect(form.tonnes).toBe(typed);
  });

  it('starts from every product with both routes worked out', async () => {
    await form.give('tonnes', '100000');
    for (const { product } of form.products) {
      await make(product);
      expect(spread()?.base.total.shownPerTonne, product).not.toBe('');
      expect(spread()?.with.total.shownPerTonne, product).not.toBe('');
      expect(form.routeOf('recovered')?.lines[0]?.train.length, product).toBeGreaterThan(2);
    }
  });

  it('keeps a price that was typed, where the next product buys the same grade', async () => {
    await form.give('tonnes', '100000');
    await make('Newsprint');
    await form.draft.session.change('material.bskp.price', '777');

    await make('Tissue');

    expect(spread()?.inputs['material.bskp.price']?.value).toBe('777');
  });

  it('has no usual prices in another currency', async () => {
    await form.give('tonnes', '100000');
    await form.give('currency', 'usd');

    expect(spread()?.currency).toBe('USD');
    expect(spread()?.inputs['material.ukp.price']?.value).toBe('');
  });

  it('leaves the open case alone until one goes on with it', async () => {
    const before = book.session.text;
    await form.give('tonnes', '100000');
    expect(book.session.text).toBe(before);

    let hasGoneOn = false;
    await book.file.openNew(form.draft.session.text, () => (hasGoneOn = true));

    expect(hasGoneOn).toBe(true);
    expect(book.session.text).toBe(form.draft.session.text);
    expect(book.file.isEdited).toBe(true);
    expect(book.file.isDemonstration).toBe(false);
    expect(openCase(book.session.text).ok).toBe(true);
  });

  it('asks before edits of the open case are left behind', async () => {
    await form.give('tonnes', '100000');
    await book.session.change('material.mixed.price', '200');
    const edited = book.session.text;
    let hasGoneOn = false;

    await book.file.openNew(form.draft.session.text, () => (hasGoneOn = true));
    expect(book.file.asksBeforeLeaving).toBe(true);
    expect(book.session.text).toBe(edited);
    expect(hasGoneOn).toBe(false);

    await book.file.leaveWithoutSaving();
    expect(hasGoneOn).toBe(true);
    expect(book.session.text).toBe(form.draft.session.text);
  });
});
