import { describe, expect, it } from 'vitest';
import { Book } from '../../../renderer/session/book.svelte.ts';
import { hasPlan, OutlayDesk } from '../../../renderer/screens/outlay/outlay-desk.svelte.ts';
import { withItem } from '../../../renderer/screens/outlay/plan-edits.ts';
import type { TrialOrder } from '../../../renderer/engine/trials/messages.ts';
import { npvId, openCase, uncertainty, type TrialSummary } from '../../../src/index.ts';
import { FakeHost } from '../fake-host.ts';
import { demonstration, EngineInThread } from '../open-demonstration.ts';
import { planText } from './plan-case.ts';

class CrewInThread {
  readonly orders: TrialOrder[] = [];
  stops = 0;

  run(order: TrialOrder): Promise<TrialSummary | null> {
    this.orders.push(order);
    const opened = openCase(order.text);
    return Promise.resolve(opened.ok ? uncertainty(opened.value, order.result, { trials: 1024 }) : null);
  }

  stop(): void {
    this.stops += 1;
  }
}

async function deskOn(text: string): Promise<{ book: Book; desk: OutlayDesk; crew: CrewInThread }> {
  const book = new Book(new FakeHost().asHost(), new EngineInThread(), demonstration);
  const crew = new CrewInThread();
  await book.session.open(text);
  const desk = new OutlayDesk(book, crew);
  await desk.refresh();
  return { book, desk, crew };
}

describe('the desk of the plan', () => {
  it('holds the results of the plan and draws trials of its present value', async () => {
    const { desk, crew } = await deskOn(planText);
    expect(desk.results?.npv).toBeCloseTo(38_718_697, -3);
    expect(crew.orders.map(({ result }) => result)).toEqual([npvId]);
    expect(desk.aboveNothing).toBeGreaterThan(0.5);
    expect(desk.aboveNothing).toBeLessThan(1);
  });

  it('draws nothing for a case without a plan', async () => {
    const { desk, crew } = await deskOn(demonstration);
    expect(desk.results).toBeNull();
    expect(crew.orders).toEqual([]);
    expect(desk.aboveNothing).toBeNull();
  });

  it('begins a plan, and gives it up again', async () => {
    const { book, desk } = await deskOn(demonstration);
    await desk.start();
    await desk.refresh();
    expect(desk.refusal).toEqual([]);
    expect(desk.results?.plan.items).toHaveLength(1);
    expect(hasPlan(book.session.text)).toBe(true);

    await desk.change(() => null, 'Give the plan up');
    await desk.refresh();
    expect(desk.results).toBeNull();
    expect(desk.summary).toBeNull();
  });

  it('never counts the capital charge and the plan both', async () => {
    const { book, desk } = await deskOn(demonstration);
    const charged = (): boolean =>
      book.session.spread?.groups.some(({ rows }) => rows.some(({ key }) => key === 'capital.capital')) ?? false;
    expect(charged()).toBe(true);
    await desk.start();
    expect(charged()).toBe(false);
  });

  it('changes the plan by one edit that can be undone by its name', async () => {
    const { book, desk } = await deskOn(planText);
    expect(await desk.change((plan) => withItem(plan, 'Boiler'), 'Add an item')).toBe(true);
    expect(book.session.history.undoes).toBe('Add an item');
    await desk.refresh();
    expect(desk.results?.plan.items.at(-1)?.label).toBe('Boiler');
  });

  it('calls a figure that is new by its name on the way back, not by its id', async () => {
    const { book } = await deskOn(planText);
    await book.session.change('investment.item.yard.1', '1000000');
    expect(book.session.history.undoes).toBe('Bale yard and building, 2026, Investment plan');
  });

  it('keeps why a change was refused', async () => {
    const { desk } = await deskOn(planText);
    expect(await desk.change((plan) => ({ ...plan, years: 40 }), 'Plan of 40 years')).toBe(false);
    expect(desk.refusal.join(' ')).toContain('30');
    expect(desk.results?.plan.years).toBe(15);
  });

  it('says when trials were stopped', async () => {
    const { desk, crew } = await deskOn(planText);
    desk.stopTrials();
    expect(desk.isStopped).toBe(true);
    expect(crew.stops).toBe(1);
    await desk.drawTrials();
    expect(desk.isStopped).toBe(false);
  });
});
