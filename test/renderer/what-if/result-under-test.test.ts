import { describe, expect, it } from 'vitest';
import { resultNames } from '../../../renderer/screens/what-if/tornado/result-words.ts';
import { WhatIfDesk } from '../../../renderer/screens/what-if/what-if-desk.svelte.ts';
import { Book } from '../../../renderer/session/book.svelte.ts';
import { resultInForce, resultsOffered } from '../../../renderer/session/what-if-place.svelte.ts';
import { FakeHost } from '../fake-host.ts';
import { EngineInThread } from '../open-demonstration.ts';
import { planText } from '../outlay/plan-case.ts';

describe('the results under test', () => {
  it('have the present value among them wherever there is a plan, and nowhere else', () => {
    expect(resultsOffered('in the plan').map((result) => resultNames[result])).toEqual([
      'Cost per tonne',
      'Cost without policy',
      'Carbon per tonne',
      'Present value',
    ]);
    expect(resultsOffered('counted')).not.toContain('investment.npv');
    expect(resultsOffered('before new plant')).not.toContain('investment.npv');
    expect(resultsOffered(undefined)).not.toContain('investment.npv');
  });

  it('fall back to the cost of a tonne from a present value that the case does not have', () => {
    expect(resultInForce('investment.npv', 'in the plan')).toBe('investment.npv');
    expect(resultInForce('investment.npv', 'counted')).toBe('difference.total');
    expect(resultInForce('difference.footprint.total', 'counted')).toBe('difference.footprint.total');
  });
});

describe('a plan that is given up while its present value is asked for', () => {
  it('leaves the cost of a tonne under test, and its return brings the present value back', async () => {
    const book = new Book(new FakeHost().asHost(), new EngineInThread(), planText);
    await book.start();
    const crew = { run: () => Promise.resolve(null), stop: () => undefined };
    const desk = new WhatIfDesk(book, crew);
    book.whatIfPlace.result = 'investment.npv';
    expect(desk.result).toBe('investment.npv');

    expect(await book.session.rebuild({ kind: 'set investment', plan: null }, 'Give up the plan')).toEqual([]);
    expect(desk.result).toBe('difference.total');
    await desk.refreshSwings({ result: desk.result, method: 'usual range', share: 0.2 });
    expect(desk.sensitivity?.result).toBe('difference.total');

    await book.session.undo();
    expect(desk.result).toBe('investment.npv');
    await desk.refreshSwings({ result: desk.result, method: 'usual range', share: 0.2 });
    expect(desk.sensitivity?.result).toBe('investment.npv');
    expect(desk.ties.length).toBeGreaterThan(0);
  });
});
