import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Dice } from '../../support/dice.ts';
import { numberedCase } from './numbered-case.ts';
import { oneLife } from './one-life.ts';
import { whatIsLeft } from './what-is-left.ts';

/** An edit this old, in milliseconds, must have reached the disk. */
const oldEnough = 1000;

interface Tally {
  kills: number;
  edits: number;
  whileSaving: number;
  /** Age of the oldest edit that was lost in any kill, in milliseconds. */
  oldestLost: number;
  lostOlderThanOneSecond: number;
  lostThoughSaved: number;
  unreadable: number;
  parts: number;
  failures: string[];
}

/** Kills the program at random moments, each time looks at what is left, and lets the next life go on from there. */
export async function tryKills(kills: number, seed: number): Promise<Tally> {
  const tally: Tally = {
    kills: 0,
    edits: 0,
    whileSaving: 0,
    oldestLost: 0,
    lostOlderThanOneSecond: 0,
    lostThoughSaved: 0,
    unreadable: 0,
    parts: 0,
    failures: [],
  };
  // Two programs at a time, each in a folder of its own.
  const half = Math.ceil(kills / 2);
  await Promise.all([livesIn(half, seed, tally), livesIn(kills - half, seed + 1, tally)]);
  return tally;
}

async function livesIn(kills: number, seed: number, tally: Tally): Promise<void> {
  const folder = await mkdtemp(join(tmpdir(), 'faults-'));
  const dice = new Dice(seed);
  await writeFile(join(folder, 'mill.tonne'), numberedCase(0, 0));
  for (let kill = 0; kill < kills; kill += 1) {
    const own = dice.whole(1, 2 ** 30);
    const lived = dice.whole(20, 2400);
    await judgeLife(folder, own, lived, tally);
  }
  await rm(folder, { recursive: true });
}

async function judgeLife(folder: string, seed: number, milliseconds: number, tally: Tally): Promise<void> {
  const before = await whatIsLeft(folder);
  const life = await oneLife(folder, seed, milliseconds);
  const left = await whatIsLeft(folder);
  const fail = (sentence: string): void => {
    tally.failures.push(`After ${String(milliseconds)} ms with seed ${String(seed)}: ${sentence}`);
  };
  tally.kills += 1;
  tally.edits += life.edits.length;
  tally.parts = Math.max(tally.parts, left.parts);
  if (life.wasSaving) tally.whileSaving += 1;
  for (const failure of life.failures) fail(failure);
  for (const name of left.unreadable) fail(`${name} cannot be read.`);
  tally.unreadable += left.unreadable.length;
  if (left.best < before.best) fail(`edit ${String(before.best)} of an earlier life is gone.`);
  if (left.inFile < life.lastSaved) {
    tally.lostThoughSaved += 1;
    fail(`edit ${String(life.lastSaved)} was saved, and the file holds ${String(left.inFile)}.`);
  }
  const lost = life.edits.filter(({ number }) => number > left.best).map(({ at }) => life.killedAt - at);
  tally.oldestLost = Math.max(tally.oldestLost, ...lost);
  const tooOld = lost.filter((age) => age > oldEnough).length;
  tally.lostOlderThanOneSecond += tooOld;
  if (tooOld > 0) fail(`${String(tooOld)} edits older than a second are lost.`);
}
