import { expect, it } from 'vitest';
import example from '../../../examples/machine.tonne?raw';
import { MachineDesk } from '../../../renderer/screens/machine/machine-desk.svelte.ts';
import { effectRows } from '../../../renderer/screens/machine/effect-rows.ts';
import { Book } from '../../../renderer/session/book.svelte.ts';
import { FakeHost } from '../fake-host.ts';
import { demonstration, EngineInThread } from '../open-demonstration.ts';

async function deskOn(text: string): Promise<{ book: Book; desk: MachineDesk }> {
  const book = new Book(new FakeHost().asHost(), new EngineInThread(), demonstration);
  expect(await book.session.open(text)).toEqual([]);
  const desk = new MachineDesk(book);
  await desk.refresh();
  return { book, desk };
}

it('throws the switch as an edit that goes back, and shows what comes of each row in that view', async () => {
  const { book, desk } = await deskOn(example);
  const said = (key: string) => {
    const row = effectRows(book.session.spread!, desk.answer!.effect, '€').find((each) => each.key === key)!;
    return `${row.right.value?.toFixed(0) ?? ''} ${row.right.after}`;
  };
  // 96 000 t x 1.5 % lost.
  expect(desk.answer?.effect.inForce).toBe('soldOut');
  expect(said('speed')).toBe('1440 t a year fewer');

  await desk.limitBy('ordersLimited');
  await desk.refresh();
  // 8 000 h x 0.015 / 0.985 more.
  expect(desk.answer?.effect.inForce).toBe('ordersLimited');
  expect(said('speed')).toBe('122 h a year more');
  expect(said('service')).toBe('960 t a year more to make');

  await book.session.undo();
  await desk.refresh();
  expect(desk.answer?.effect.inForce).toBe('soldOut');
});

it('leaves the switch alone that is thrown already', async () => {
  const { book, desk } = await deskOn(example);
  await desk.limitBy('soldOut');
  expect(book.session.history.undoes).toBeNull();
});

it('keeps the steps of the view in force at the difference that the Spread shows', async () => {
  const { book, desk } = await deskOn(example);
  const { soldOut } = desk.answer!.effect;
  const sum = [soldOut.costsAlone, ...soldOut.causes].reduce(
    (total, { shown }) => total + Math.round(Number(shown) * 100),
    0,
  );

  expect(soldOut.left.shown).toBe(book.session.spread!.difference.shownPerYear);
  expect(sum).toBe(Math.round(Number(soldOut.left.shown) * 100));
});

it('turns at the speed at which nothing is left', async () => {
  const { book, desk } = await deskOn(example);
  const [speed] = desk.answer!.turns!.crossings;
  await book.session.change('recovered.machine.speed', String(speed));

  expect(Number(book.session.spread!.difference.shownPerTonne)).toBe(0);
});
