import { describe, expect, it } from 'vitest';
import type { MonthsAnswer } from '../../../renderer/engine/messages.ts';
import { type CellGrid } from '../../../renderer/screens/what-if/table/cell-grid.ts';
import { layOutHeat } from '../../../renderer/screens/what-if/table/heat-layout.ts';
import { monthPrices } from '../../../renderer/screens/what-if/table/months/month-prices.ts';
import { MonthsDesk } from '../../../renderer/screens/what-if/table/months/months-desk.svelte.ts';
import { monthsText, pastedMonths } from '../../../renderer/screens/what-if/table/months/months-text.ts';
import { shownTable } from '../../../renderer/screens/what-if/table/shown-table.ts';
import { Book } from '../../../renderer/session/book.svelte.ts';
import { FakeHost } from '../fake-host.ts';
import { demonstration, demonstrationSpread, EngineInThread } from '../open-demonstration.ts';
import { smallTable } from './tables.ts';

const points = [
  { month: '2024-01', pulp: '620.5', recovered: '-4' },
  { month: '2024-02', pulp: '615', recovered: '110' },
];

describe('months in the box', () => {
  it.each(['.', ','])('come back as they were kept, with %s as decimal mark', (mark) => {
    expect(pastedMonths(monthsText(points, mark), mark)).toEqual({ points, refused: [] });
  });

  it('are asked for where the box is empty', () => {
    expect(pastedMonths(' \n', '.').refused).toEqual(['There is no month here.']);
  });

  it('are refused row by row where a price can be read in two ways', () => {
    expect(pastedMonths('a\t1,100\t90', '.').refused).toEqual([
      'Row 1 (“a 1,100 90”): the pulp price “1,100” can be read in two ways; write it without marks between thousands.',
    ]);
  });
});

describe('the desk of months', () => {
  async function started() {
    const book = new Book(new FakeHost().asHost(), new EngineInThread(), demonstration);
    await book.start();
    const asked: { months: MonthsAnswer | null } = { months: null };
    const ask = async (): Promise<void> => {
      asked.months = await book.session.months('difference.total');
    };
    await ask();
    return { book, asked, ask, desk: new MonthsDesk(book, asked) };
  }

  it('starts with the prices of what is bought most, and keeps what is pasted as one edit that undo takes back', async () => {
    const { book, asked, ask, desk } = await started();
    const before = book.session.text;
    expect(desk.inputs).toEqual(asked.months?.usual);

    desk.write('2024-01\t300\t190\n2024-02\t900\t20');
    await desk.keep();
    await ask();
    expect(desk.refused).toEqual([]);
    expect(asked.months?.results).toMatchObject({ below: 1, above: 1 });
    expect(book.session.history.undoes).toBe('Months of prices');
    expect(book.announcer.text).toBe('2 months are kept.');

    await book.session.undo();
    expect(book.session.text).toBe(before);
  });

  it('keeps nothing and loses nothing where a row is none', async () => {
    const { book, desk } = await started();
    const before = book.session.text;
    const text = '2024-01\t300\t190\n2024-02\tx\t20';

    desk.write(text);
    await desk.keep();
    expect([desk.text, book.session.text]).toEqual([text, before]);
    expect(desk.refused).toEqual(['Row 2 (“2024-02 x 20”): the pulp price “x” is not a number.']);
  });

  it('says why the case refuses one price on both sides', async () => {
    const { desk } = await started();

    desk.write('2024-01\t300\t190');
    desk.choose('pulp', desk.inputs.recovered);
    await desk.keep();
    expect(desk.refused.join()).toContain('another input than "pulp"');
  });

  it('offers the prices of bought materials, and nothing else', () => {
    const offered = monthPrices(demonstrationSpread()).map(({ value }) => value);

    expect(offered).toContain('material.mixed.price');
    expect(offered).toHaveLength(5);
  });
});

describe('months on the map', () => {
  const grid: CellGrid = { left: 10, top: 20, width: 300, height: 60, columns: 3, rows: 2 };
  const table = { ...smallTable, points: [{ month: '2024-01', place: [0.5, 1] as const, value: -41_000 }] };

  it('stand at their prices between the middles of cells, and name the month and what it comes to', () => {
    // Cells are 100 by 30, and the second row is the upper one: 10 + 100, 20 + 15.
    const layout = layOutHeat(table, grid, String, true);

    expect(layout.points).toEqual([{ key: '0', x: 110, y: 35, title: '2024-01: -41000' }]);
  });

  it('are counted in the unit that cells are shown in', () => {
    expect(shownTable(table, { scale: 1000 }).points[0]?.value).toBe(-41);
  });
});
