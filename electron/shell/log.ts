import { stat, rename, appendFile, mkdir } from 'node:fs/promises';
import { dirname } from 'node:path';

const mostBytes = 256 * 1024;

/** What is noted: never a figure, a title or a path of the person's, only what the program did and the system's code for it. */
export type LogEntry =
  | 'started'
  | 'opened'
  | 'open refused'
  | 'saved'
  | 'save refused'
  | 'changed by another program'
  | 'draft not kept'
  | 'draft taken up'
  | 'screen lost'
  | 'fault in the program';

/** The program's own log in its data folder: one line an entry, two files of at most 256 KB, sent nowhere. */
export class Log {
  readonly #path: string;
  readonly #now: () => Date;
  #last: Promise<void> = Promise.resolve();

  constructor(path: string, now: () => Date) {
    this.#path = path;
    this.#now = now;
  }

  /** `detail`: a code of the system, a version, or where in the program a fault arose. */
  note(entry: LogEntry, detail = ''): void {
    const line = `${this.#now().toISOString()} ${entry}${detail === '' ? '' : `: ${detail}`}\n`;
    // A log that cannot be written must not get in the way of the work.
    this.#last = this.#last.then(() => this.#append(line)).catch(() => undefined);
  }

  /** Settles once all that was noted is written, or could not be. */
  written(): Promise<void> {
    return this.#last;
  }

  async #append(line: string): Promise<void> {
    await mkdir(dirname(this.#path), { recursive: true });
    const size = await stat(this.#path).then(
      (facts) => facts.size,
      () => 0,
    );
    if (size + line.length > mostBytes) await rename(this.#path, `${this.#path}.old`);
    await appendFile(this.#path, line);
  }
}
