import { writeSync } from 'node:fs';
import { Dice } from '../../support/dice.ts';
import { hostileFile } from './hostile-file.ts';
import { readAsProgram } from './read-as-program.ts';
import type { Stretch } from './stretch.ts';

const mostFailures = 20;
/** What took this long, in milliseconds, is read twice more and the fastest counts: the first of its kind pays for warming up. */
const slow = 700;

/** In a process of its own: makes and reads one file after the other, says which it is at, and tells at the end. */
export async function readHostileFiles(seed: number, from: number, to: number): Promise<void> {
  let refused = 0;
  let opened = 0;
  let slowest: Stretch['slowest'] = { milliseconds: 0, kind: '', file: from };
  const byKind: Record<string, number> = {};
  const failures: string[] = [];
  for (let file = from; file < to; file += 1) {
    writeSync(1, `at ${String(file)}\n`);
    // A generator whose seeds stand close together begins alike.
    const { kind, bytes } = hostileFile(new Dice(Math.imul(seed ^ file, 2_654_435_761)));
    byKind[kind] = (byKind[kind] ?? 0) + 1;
    const { outcome, fault, milliseconds: first } = await readAsProgram(bytes);
    let milliseconds = first;
    for (let again = 0; again < 2 && milliseconds > slow; again += 1) {
      milliseconds = Math.min(milliseconds, (await readAsProgram(bytes)).milliseconds);
    }
    if (milliseconds > slowest.milliseconds) slowest = { milliseconds, kind, file };
    if (outcome === 'opened') opened += 1;
    if (outcome === 'refused') refused += 1;
    if (fault !== null && failures.length < mostFailures) failures.push(`File ${String(file)} (${kind}): ${fault}`);
  }
  writeSync(1, `told ${JSON.stringify({ refused, opened, slowest, byKind, failures } satisfies Stretch)}\n`);
}
