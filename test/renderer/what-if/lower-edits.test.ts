import { beforeEach, describe, expect, it } from 'vitest';
import { Entry } from '../../../renderer/fields/entry.svelte.ts';
import { Edits } from '../../../renderer/screens/what-if/lower/edits.svelte.ts';
import { inputRows } from '../../../renderer/screens/what-if/lower/scenarios/scenario-rows.ts';
import { writtenWhatIfs } from '../../../renderer/screens/what-if/lower/written-what-ifs.ts';
import { Book } from '../../../renderer/session/book.svelte.ts';
import type { Limit } from '../../../src/index.ts';
import { FakeHost } from '../fake-host.ts';
import { demonstration, EngineInThread } from '../open-demonstration.ts';

let book: Book;
let edits: Edits;
const limit: Limit = {
  id: 'power',
  label: 'Power',
  result: 'electricity.total',
  sense: 'at most',
  value: '950',
  unit: 'kWh/t',
  kind: 'soft',
};

beforeEach(async () => {
  book = new Book(new FakeHost().asHost(), new EngineInThread(), demonstration);
  await book.start();
  edits = new Edits(book);
});

describe('an edit on the sheet', () => {
  it('is made, read out, and taken back as one', async () => {
    const before = book.session.text;

    expect(await edits.make({ kind: 'put limit', limit }, 'Add limit Power', 'Added: limit Power.')).toBe(true);
    expect(writtenWhatIfs(book.session.text).limits.at(-1)).toEqual(limit);
    expect(book.announcer.text).toBe('Added: limit Power.');
    expect(book.session.history.undoes).toBe('Add limit Power');

    await book.session.undo();
    expect(book.session.text).toBe(before);
  });

  it('says why it was refused, until the next one is made', async () => {
    const before = book.session.text;

    expect(await edits.make({ kind: 'put limit', limit: { ...limit, unit: 'GJ/t' } }, 'Add', 'Added.')).toBe(false);
    expect(edits.refusal.join(' ')).toContain('"GJ/t" was given');
    expect([book.session.text, book.announcer.text]).toEqual([before, '']);

    await edits.make({ kind: 'put limit', limit }, 'Add', 'Added.');
    expect(edits.refusal).toEqual([]);
  });
});

describe('a slot of a scenario', () => {
  const inputsOf = (id: string) => writtenWhatIfs(book.session.text).scenarios.find((each) => each.id === id)?.inputs;

  async function slot(input: string, scenario: string): Promise<Entry> {
    const answer = await book.session.scenarios();
    const more = { movers: [], named: [input] };
    const row = inputRows(answer!.table, book.session.spread!, more).find(({ id }) => id === input)!;
    const cell = row.cells.find((each) => each.scenario === scenario)!;
    const put = (typed: string): Promise<readonly string[]> =>
      book.session.changeScenario(scenario, input, typed === '' ? null : typed, row.label);
    return new Entry(book, () => cell.view, put, true);
  }

  it('gives the scenario a figure of its own and leaves the case alone', async () => {
    const entry = await slot('product.hours', 'dear-power');
    entry.type('8000');

    expect(await entry.commit()).toBe(true);
    expect(inputsOf('dear-power')?.['product.hours']).toMatchObject({ value: '8000', unit: 'h/a' });
    expect(book.session.spread?.inputs['product.hours']?.value).not.toBe('8000');
  });

  it('takes the figure away again when it is emptied', async () => {
    const entry = await slot('price.fuel', 'dear-power');
    entry.type(' ');

    expect(await entry.commit()).toBe(true);
    expect(Object.keys(inputsOf('dear-power') ?? {})).toEqual(['price.electricity']);
  });

  it('keeps what was typed when it is refused, and says why', async () => {
    const entry = await slot('material.mixed.moisture', 'scarce-paper');
    entry.type('120');

    expect(await entry.commit()).toBe(false);
    expect(entry.text).toBe('120');
    expect(entry.doubt?.sentences.join(' ')).toContain('allowed is at least 0 % and below 100 %');
    expect(inputsOf('scarce-paper')?.['material.mixed.moisture']?.value).toBe('13');
  });

  it('stands in the case before a scenario is renamed, when the entry in hand is put first', async () => {
    const entry = await slot('price.fuel', 'dear-power');
    entry.type('20');
    await book.inHand.commit();
    const scenario = writtenWhatIfs(book.session.text).scenarios.find(({ id }) => id === 'dear-power')!;
    await edits.make({ kind: 'put scenario', scenario: { ...scenario, label: 'Dear' } }, 'Rename', 'Renamed.');

    expect(inputsOf('dear-power')?.['price.fuel']?.value).toBe('20');
  });
});
