import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { tonne } from '../cli/terminal.ts';

// The terminal prints through the browser that the other tests of this group run in.
let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'report-'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

async function printed(...options: readonly string[]): Promise<string> {
  const file = join(folder, 'report.pdf');
  const { code, err } = await tonne([
    'report',
    'examples/plan.tonne',
    '--out',
    file,
    '--today',
    '2026-11-25',
    ...options,
  ]);
  if (code !== 0) throw new Error(err);
  return readFile(file, 'latin1');
}

const sheets = (pdf: string): number => pdf.match(/\/Type \/Page\b(?!s)/gu)?.length ?? 0;

describe('a report as PDF', () => {
  it('puts the page for a board on one sheet of A4, tagged and with an outline', async () => {
    const pdf = await printed('--board');
    expect(sheets(pdf)).toBe(1);
    expect(pdf).toMatch(/\/MediaBox \[0 0 594\.9\d* 841\.9\d*\]/u);
    expect(pdf).toMatch(/\/MarkInfo <<\/Type \/MarkInfo\s+\/Marked true>>/u);
    expect(pdf).toContain('/Outlines');
  });

  it('puts it on one sheet of Letter as well', async () => {
    const pdf = await printed('--board', '--letter');
    expect(sheets(pdf)).toBe(1);
    expect(pdf).toMatch(/\/MediaBox \[0 0 612 792\]/u);
  });
});
