import { spawnSync } from 'node:child_process';
import { trialsAlone } from './trials.ts';

const alone = '--trials-alone';

/** The most memory a process of its own takes that opens the demonstration case and runs a million trials with percentiles, in MiB. */
export function peakMiB(): number {
  const program = process.argv[1];
  if (program === undefined) throw new Error('The bench does not know its own file');
  const { stdout, status } = spawnSync(process.execPath, [program, alone], { encoding: 'utf8' });
  if (status !== 0) throw new Error('The trials did not end well in a process of their own');
  return Number(stdout);
}

/** In that process: runs the trials and tells the peak. True where this is that process. */
export function toldPeak(): boolean {
  if (!process.argv.includes(alone)) return false;
  trialsAlone();
  // Kibibytes, on every system.
  console.log(process.resourceUsage().maxRSS / 1024);
  return true;
}
