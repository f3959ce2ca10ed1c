import { spawn } from 'node:child_process';

/** What one life of the program said until it was killed. Times in milliseconds since 1970. */
export interface Life {
  readonly edits: readonly { readonly number: number; readonly at: number }[];
  readonly lastSaved: number;
  readonly wasSaving: boolean;
  readonly failures: readonly string[];
  readonly killedAt: number;
}

/** Starts the program on a folder, lets it work for a while, and kills it without a word (SIGKILL). */
export function oneLife(folder: string, seed: number, milliseconds: number): Promise<Life> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [process.argv[1] ?? '', 'live', folder, String(seed)], {
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let said = '';
    let complaint = '';
    let killedAt = 0;
    const kill = (): void => {
      killedAt = Date.now();
      child.kill('SIGKILL');
    };
    child.stdout.on('data', (chunk: Buffer) => {
      const isFirst = said === '';
      said += chunk.toString();
      if (isFirst) setTimeout(kill, milliseconds);
    });
    child.stderr.on('data', (chunk: Buffer) => (complaint += chunk.toString()));
    child.on('error', reject);
    child.on('close', () => {
      if (killedAt === 0) reject(new Error(`The program ended by itself: ${complaint}`));
      else resolve(lifeOf(said, killedAt));
    });
  });
}

function lifeOf(said: string, killedAt: number): Life {
  const lines = said.split('\n');
  const numbers = (word: string): number[] =>
    lines.filter((line) => line.startsWith(`${word} `)).map((line) => Number(line.split(' ')[1]));
  const edits = lines
    .filter((line) => line.startsWith('edit '))
    .map((line) => line.split(' ').map(Number))
    .map(([, number = 0, at = 0]) => ({ number, at }));
  const lastSaved = Math.max(0, ...numbers('saved'));
  return {
    edits,
    lastSaved,
    wasSaving: Math.max(0, ...numbers('saving')) > lastSaved,
    failures: lines.filter((line) => line.startsWith('failed ')),
    killedAt,
  };
}
