import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { diskMeans } from '../../../electron/data/data-folder.ts';
import { DraftFolder } from '../../../electron/drafts/draft-folder.ts';
import { numberOf } from './numbered-case.ts';

/** What a killed program left on the disk. */
export interface Left {
  /** The last edit that the file holds. */
  readonly inFile: number;
  /** The last edit that the file or a draft holds. */
  readonly best: number;
  /** Files that ought to be whole and are not. */
  readonly unreadable: readonly string[];
  /** Pieces of a write that was cut off; their names say that they are no cases. */
  readonly parts: number;
}

export async function whatIsLeft(folder: string): Promise<Left> {
  const unreadable: string[] = [];
  const read = (name: string, text: string): number => {
    const number = numberOf(text);
    if (number === null) unreadable.push(name);
    return number ?? -1;
  };
  const draftsAt = join(folder, 'data', 'drafts');
  const names = await readdir(folder);
  const draftNames = await readdir(draftsAt).catch(() => []);
  let inFile = -1;
  for (const name of names.filter((each) => each.endsWith('.tonne') || each.endsWith('.bak'))) {
    const number = read(name, await readFile(join(folder, name), 'utf8'));
    if (name === 'mill.tonne') inFile = number;
  }
  const drafts = await new DraftFolder(draftsAt, diskMeans).readAll();
  const whole = new Set(drafts.map(({ id }) => `${id}.draft`));
  unreadable.push(...draftNames.filter((name) => name.endsWith('.draft') && !whole.has(name)));
  const inDrafts = drafts.map(({ id, text }) => read(`${id}.draft`, text));
  const parts = [...names, ...draftNames].filter((name) => /\.(?:part|bak)-\w+$/u.test(name)).length;
  return { inFile, best: Math.max(inFile, ...inDrafts), unreadable, parts };
}
