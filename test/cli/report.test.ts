import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { temporaryFolder } from '../electron/temporary-folder.ts';
import { planFile, tonne } from './terminal.ts';

describe('report', () => {
  it('writes a page that stands by itself, with the figures of --set in force', async () => {
    const target = join(await temporaryFolder(), 'board.html');
    const options = ['--board', '--today', '2026-02-28', '--set', 'product.tonnes=50000'];
    const { code, out } = await tonne(['report', planFile, '--out', target, ...options], 'en-GB');
    const page = await readFile(target, 'utf8');

    expect(code).toBe(0);
    expect(out).toBe(`${target} is written.\n`);
    expect(page).toContain('28 February 2026');
    expect(page).toContain('50,000 t/year');
    expect(page).toContain('font/woff2;base64,');
  });

  it.each([
    [['--out', 'board.txt'], '--out takes a file ending in .html or .pdf, not "board.txt".\n'],
    [['--out', 'b.html', '--today', '2026-02-30'], '--today takes a day such as 2026-11-25; "2026-02-30" was given.\n'],
    [['--out', 'b.html', '--today', 'today'], '--today takes a day such as 2026-11-25; "today" was given.\n'],
  ])('says what is wrong with %s', async (options, sentence) => {
    expect(await tonne(['report', planFile, ...options])).toEqual({ code: 2, out: '', err: sentence });
  });
});
