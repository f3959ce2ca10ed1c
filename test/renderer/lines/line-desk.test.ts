import { beforeEach, describe, expect, it } from 'vitest';
import { LineDesk } from '../../../renderer/screens/lines/line-desk.svelte.ts';
import { Book } from '../../../renderer/session/book.svelte.ts';
import { FakeHost } from '../fake-host.ts';
import { demonstration, EngineInThread } from '../open-demonstration.ts';

let book: Book;
let desk: LineDesk;
const stages = (): readonly string[] => desk.balance?.stages.map(({ stage }) => stage) ?? [];

beforeEach(async () => {
  book = new Book(new FakeHost().asHost(), new EngineInThread(), demonstration);
  await book.start();
  desk = new LineDesk(book);
  await desk.start();
  book.linePlace.goToLine('recovered', 'mixed');
  await desk.refresh();
});

function choice(like: string) {
  const found = desk.choices.stages.find((each) => each.like === like);
  if (found === undefined) throw new Error(`There is no stage ${like}.`);
  return found;
}

describe('the lines page', () => {
  it('looks at the longest line of the right page first', async () => {
    const fresh = new Book(new FakeHost().asHost(), new EngineInThread(), demonstration);
    await fresh.start();
    await new LineDesk(fresh).refresh();

    expect([fresh.linePlace.route, fresh.linePlace.line]).toEqual(['recovered', 'supermarket']);
  });

  it('adds a stage after the one looked at, looks at the new one, and says so', async () => {
    desk.goTo('coarse');
    await desk.addStage(choice('lcln'), 'lightweight cleaner');

    expect(stages()[4]).toBe('lcln');
    expect(desk.stage?.stage).toBe('lcln');
    expect(book.announcer.text).toBe('Added as stage 5: lightweight cleaner.');
  });

  it('takes an added and a removed stage back, so that the case text is what it was', async () => {
    const before = book.session.text;
    await desk.addStage(choice('lcln'), 'lightweight cleaner');
    await desk.removeStage();
    expect(book.session.history.undoes).toBe('Remove lightweight cleaner');

    await book.session.undo();
    await book.session.undo();

    expect(book.session.text).toBe(before);
  });

  it('moves a stage and stays with it, and does nothing at the end of the train', async () => {
    desk.goTo('detrash');
    await desk.moveStage(-1);
    expect(stages().slice(0, 2)).toEqual(['detrash', 'pulper']);
    expect(desk.place).toBe(0);

    const before = book.session.text;
    await desk.moveStage(-1);
    expect(book.session.text).toBe(before);
  });

  it('keeps the last stage of a line', async () => {
    for (let left = stages().length; left > 1; left -= 1) await desk.removeStage();
    const [last] = stages();
    await desk.removeStage();

    expect(stages()).toEqual([last]);
  });

  it('lets a drum reject the wet-strength paper that a vat breaks up, when one is swapped for the other', async () => {
    const wetStrength = (): number =>
      desk.balance?.stages[0]?.leaves.find(({ component }) => component === 'wetStrength')?.mass ?? Number.NaN;
    desk.goTo('pulper');
    const byVat = wetStrength();
    await desk.setUpStage({ like: 'drum' }, 'Swap vat for drum');

    expect(desk.stage?.kind).toBe('drum pulper');
    expect(wetStrength()).toBeGreaterThan(2 * byVat);
  });

  it('says what an edit added to the cost of the route, and nothing of it on another route', async () => {
    const before = desk.route?.cost.value ?? Number.NaN;
    await book.session.change('recovered.mixed.fine.rejectRate', '30');
    await desk.refresh();
    const after = desk.route?.cost.value ?? Number.NaN;
    expect(after).not.toBe(before);
    expect(desk.change).toBeCloseTo(after - before, 12);

    book.linePlace.goToLine('virgin', '');
    await desk.refresh();
    expect(desk.change).toBe(0);
  });

  it('gives a component a figure that it has not had', async () => {
    const id = 'recovered.mixed.detrash.removal.ash';
    expect(book.session.spread?.inputs[id]).toBeUndefined();
    expect(await book.session.change(id, '3')).toEqual([]);

    expect(book.session.spread?.inputs[id]?.value).toBe('3');
  });

  it('moves on to a line that is there, when the one looked at is removed', async () => {
    await desk.rebuild({ kind: 'remove line', route: 'recovered', line: 'mixed' }, 'Remove', 'Removed.');

    expect(desk.line?.id).toBe('supermarket');
    expect(desk.balance?.line).toBe('supermarket');
  });
});
