import { spawn } from 'node:child_process';
import type { Stretch } from './stretch.ts';

/** A reader that shows no progress for so long, in milliseconds, is stopped. Far above what one file may take, for busy machines. */
const hangsAfter = 120_000;

/** Has a stretch of files read in a process of its own, and watches from outside that it neither hangs nor dies. */
export function readStretch(seed: number, from: number, to: number): Promise<Stretch> {
  return new Promise((resolve) => {
    const words = ['read', seed, from, to].map(String);
    const child = spawn(process.execPath, [process.argv[1] ?? '', ...words], { stdio: ['ignore', 'pipe', 'pipe'] });
    let at = '';
    let told: Stretch | null = null;
    let complaint = '';
    let rest = '';
    let hangs = false;
    const stop = (): void => {
      hangs = true;
      child.kill('SIGKILL');
    };
    let watch = setTimeout(stop, hangsAfter);
    child.stdout.on('data', (chunk: Buffer) => {
      clearTimeout(watch);
      watch = setTimeout(stop, hangsAfter);
      const lines = (rest + chunk.toString()).split('\n');
      rest = lines.pop() ?? '';
      for (const line of lines) {
        if (line.startsWith('at ')) at = line.slice(3);
        if (line.startsWith('told ')) told = JSON.parse(line.slice(5)) as Stretch;
      }
    });
    child.stderr.on('data', (chunk: Buffer) => (complaint += chunk.toString()));
    child.on('close', () => {
      clearTimeout(watch);
      const what = hangs ? 'hangs the reader' : `ended the reader: ${complaint}`;
      resolve(told ?? stopped(`File ${at} of seed ${String(seed)} ${what}`));
    });
  });
}

function stopped(failure: string): Stretch {
  const slowest = { milliseconds: 0, kind: '', file: 0 };
  return { refused: 0, opened: 0, slowest, byKind: {}, failures: [failure] };
}
