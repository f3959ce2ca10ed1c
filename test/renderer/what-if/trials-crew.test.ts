import { describe, expect, it } from 'vitest';
import demonstration from '../../../examples/demonstration.tonne?raw';
import { TrialCrew } from '../../../renderer/engine/trials/trial-crew.ts';
import type { TrialSummary } from '../../../src/index.ts';
import { openCase, uncertainty } from '../../../src/index.ts';
import { WorkerInThread } from './worker-in-thread.ts';

const trials = 5_000;
const text = demonstration.replace(/"trials": \d+/u, `"trials": ${String(trials)}`);
const order = { text, result: 'difference.total' };
const hearNothing = () => undefined;

function crewOf(size: number): { readonly crew: TrialCrew; readonly workers: WorkerInThread[] } {
  const workers: WorkerInThread[] = [];
  const start = () => {
    const worker = new WorkerInThread();
    workers.push(worker);
    return worker;
  };
  return { crew: new TrialCrew(start, size), workers };
}

/** Every number of a summary with its place in it. */
function numbersIn(part: unknown, path = ''): readonly (readonly [string, number])[] {
  if (typeof part === 'number') return [[path, part]];
  if (typeof part !== 'object' || part === null) return [];
  return Object.entries(part).flatMap(([key, value]) => numbersIn(value, `${path}.${key}`));
}

function differing(one: TrialSummary, other: TrialSummary): readonly string[] {
  const before = new Map(numbersIn(one));
  const after = numbersIn(other);
  expect(after.length).toBe(before.size);
  expect(before.size).toBeGreaterThan(100);
  return after.flatMap(([path, value]) => (Object.is(before.get(path), value) ? [] : [path]));
}

function alone(changes = {}): TrialSummary {
  const opened = openCase(text);
  if (!opened.ok) throw new Error('The demonstration does not open.');
  return uncertainty(opened.value, order.result, changes);
}

const inOneGo = alone();
const otherSeed = alone({ seed: 1 });

describe('trials dealt out among workers', () => {
  it.each([1, 2, 3, 4])('come to the same to the last bit with %d of them as in one go', async (size) => {
    const { crew } = crewOf(size);

    const summary = await crew.run(order, hearNothing);

    expect(summary?.trials).toBe(trials);
    expect(differing(inOneGo, summary ?? otherSeed)).toEqual([]);
  });

  it('come to something else with another seed', () => {
    expect(otherSeed.trials).toBe(trials);
    expect(otherSeed.results[0]?.mean).not.toBe(inOneGo.results[0]?.mean);
  });

  it('are told as they are done, rising to all of them', async () => {
    const { crew } = crewOf(2);
    const told: (readonly [number, number])[] = [];

    await crew.run(order, (done, of) => told.push([done, of]));

    const done = told.map(([so]) => so);
    // Five blocks of at most 1,024 trials, each told of once.
    expect(done).toHaveLength(5);
    expect(done.toSorted((a, b) => a - b)).toEqual(done);
    expect(told.at(-1)).toEqual([trials, trials]);
  });

  it('leave workers without a share alone where there are more workers than blocks', async () => {
    const { crew, workers } = crewOf(8);

    const summary = await crew.run(order, hearNothing);

    expect(summary?.trials).toBe(trials);
    expect(workers.filter(({ asked }) => asked.some(({ kind }) => kind === 'run'))).toHaveLength(5);
  });

  it('can be drawn again and again by the same workers', async () => {
    const { crew, workers } = crewOf(2);

    const first = await crew.run(order, hearNothing);
    const second = await crew.run({ ...order, result: 'difference.footprint.total' }, hearNothing);
    const third = await crew.run(order, hearNothing);

    expect(workers).toHaveLength(2);
    expect(second?.results[0]?.id).toBe('difference.footprint.total');
    expect(third).toEqual(first);
  });
});

describe('stopping', () => {
  it('answers at once that there is nothing, and draws no further', async () => {
    const { crew, workers } = crewOf(2);
    let stoppedAt = 0;

    const summary = await crew.run(order, (done) => {
      if (stoppedAt === 0) crew.stop();
      stoppedAt = done;
    });

    expect(summary).toBeNull();
    expect(stoppedAt).toBeLessThan(trials);
    expect(workers.flatMap(({ answered }) => answered.filter(({ kind }) => kind === 'segment'))).toEqual([]);
    expect(workers.map(({ answered }) => answered.at(-1)?.kind)).toEqual(['stopped', 'stopped']);
  });

  it('leaves a crew that can be asked anew', async () => {
    const { crew } = crewOf(2);
    await crew.run(order, () => crew.stop());

    const summary = await crew.run(order, hearNothing);

    expect(differing(inOneGo, summary ?? otherSeed)).toEqual([]);
  });

  it('is what a newer order does to the older one', async () => {
    const { crew } = crewOf(2);
    let newer: Promise<TrialSummary | null> | undefined;

    const older = await crew.run(order, () => {
      newer ??= crew.run({ text, result: 'difference.withoutPolicy' }, hearNothing);
    });

    expect(older).toBeNull();
    expect((await newer)?.results[0]?.id).toBe('difference.withoutPolicy');
  });

  it('lets only the newest of many orders answer', async () => {
    const { crew } = crewOf(2);

    const answers = await Promise.all([1, 2, 3].map(() => crew.run(order, hearNothing)));

    expect(answers.map((answer) => answer?.trials ?? null)).toEqual([null, null, trials]);
  });
});

describe('what goes wrong', () => {
  it('is told where a case cannot be opened, and the next order is drawn', async () => {
    const { crew } = crewOf(2);

    await expect(crew.run({ ...order, text: '{}' }, hearNothing)).rejects.toThrow('cannot be opened');

    expect((await crew.run(order, hearNothing))?.trials).toBe(trials);
  });

  it('is told where a worker falls over; the others leave off, and the next order calls new ones', async () => {
    const { crew, workers } = crewOf(2);
    let hasFallen = false;
    const run = crew.run(order, () => {
      if (!hasFallen) workers[1]?.fallOver('out of memory');
      hasFallen = true;
    });

    await expect(run).rejects.toThrow('out of memory');
    expect(workers.map(({ isHome }) => isHome)).toEqual([true, true]);

    expect((await crew.run(order, hearNothing))?.trials).toBe(trials);
    expect(workers).toHaveLength(4);
  });

  it('is not told of an order that nobody waits for any more', async () => {
    const { crew } = crewOf(1);

    const faulty = crew.run({ ...order, text: '{}' }, hearNothing);
    const newer = crew.run(order, hearNothing);

    expect(await faulty).toBeNull();
    expect((await newer)?.trials).toBe(trials);
  });
});

describe('a crew that is dismissed', () => {
  it('goes home, and what it was drawing comes to nothing', async () => {
    const { crew, workers } = crewOf(2);

    const summary = await crew.run(order, () => crew.dismiss());

    expect(summary).toBeNull();
    expect(workers.map(({ isHome }) => isHome)).toEqual([true, true]);
  });

  it('is replaced by a new one at the next order', async () => {
    const { crew, workers } = crewOf(2);
    await crew.run(order, () => crew.dismiss());

    expect((await crew.run(order, hearNothing))?.trials).toBe(trials);
    expect(workers.map(({ isHome }) => isHome)).toEqual([true, true, false, false]);
  });
});
