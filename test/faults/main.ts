// The faults that a program must survive, tried on the real code for files: `npm run faults`. One bundle plays all parts: the judge,
// a program that is killed (`live`), and a reader of hostile files (`read`).
import { tryDisks } from './disks/try-disks.ts';
import { readHostileFiles } from './hostile/read-hostile-files.ts';
import { tryHostileFiles } from './hostile/try-hostile-files.ts';
import { live } from './kills/live.ts';
import { tryKills } from './kills/try-kills.ts';

function numberAfter(word: string, usual: number): number {
  const at = process.argv.indexOf(word);
  return at < 0 ? usual : Number(process.argv[at + 1]);
}

async function judge(): Promise<void> {
  const seed = numberAfter('--seed', 20_261_125);
  const disks = await tryDisks();
  const hostile = await tryHostileFiles(numberAfter('--hostile', 100_000), seed);
  const kills = await tryKills(numberAfter('--kills', 200), seed);
  const isSound = disks.failures.length === 0 && hostile.failures.length === 0 && kills.failures.length === 0;
  process.stdout.write(`${JSON.stringify({ seed, isSound, disks, hostile, kills }, null, 2)}\n`);
  process.exitCode = isSound ? 0 : 1;
}

const [, , part, ...given] = process.argv;
const numbers = given.map(Number);
if (part === 'read') await readHostileFiles(numbers[0] ?? 0, numbers[1] ?? 0, numbers[2] ?? 0);
else if (part === 'live') await live(given[0] ?? '', numbers[1] ?? 0);
else await judge();
