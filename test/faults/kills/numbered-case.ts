import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readCase } from '../../../src/case/read-case.ts';

const demonstration = JSON.parse(readFileSync(join(process.cwd(), 'examples/demonstration.tonne'), 'utf8')) as object;

/** A case that can be opened and carries the number of its last edit in its note, with padding that makes its size vary. */
export function numberedCase(edit: number, padding: number): string {
  return `${JSON.stringify({ ...demonstration, note: `edit ${String(edit)} ${'.'.repeat(padding)}` }, null, 2)}\n`;
}

/** The number in a text; null where the text is no readable case. */
export function numberOf(text: string): number | null {
  const read = readCase(text);
  if (!read.ok) return null;
  const number = /^edit (\d+) /u.exec(read.value.note)?.[1];
  return number === undefined ? null : Number(number);
}
