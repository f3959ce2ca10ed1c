import { mkdir, readFile, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { clampBounds } from '../../electron/shell/clamp-bounds.ts';
import { faultPlace } from '../../electron/shell/fault-place.ts';
import { Log } from '../../electron/shell/log.ts';
import { lookFor, withRecent } from '../../electron/shell/recent-files.ts';
import { nextZoom } from '../../electron/shell/zoom-steps.ts';
import { temporaryFolder } from './temporary-folder.ts';

const area = (x: number, y: number, width: number, height: number) => ({ x, y, width, height });
const left = area(0, 0, 1920, 1040);
const right = area(1920, 0, 1280, 984);

describe('where the window last stood', () => {
  it.each([
    ['stays where all of it can be seen', area(100, 50, 1280, 860), [left], area(100, 50, 1280, 860)],
    ['stays on the second display', area(1930, 10, 1200, 900), [left, right], area(1930, 10, 1200, 900)],
    ['moves to the display that is left', area(2400, 100, 800, 700), [left], area(1120, 100, 800, 700)],
    ['moves to the display that it was most on', area(1800, 0, 1280, 900), [left, right], area(1920, 0, 1280, 900)],
    ['is cut to a smaller display', area(0, 0, 3000, 2000), [right], area(1920, 0, 1280, 984)],
    ['comes down from above the top', area(50, -400, 900, 700), [left], area(50, 0, 900, 700)],
    ['comes back from a display to the left', area(-1500, 200, 900, 700), [left], area(0, 200, 900, 700)],
    ['takes in a size that is none', area(10, 10, 0, -5), [left], area(10, 10, 1, 1)],
  ])('%s', (_what, wanted, areas, expected) => {
    expect(clampBounds(wanted, areas)).toEqual(expected);
  });

  it('is forgotten where no display is told', () => {
    expect(clampBounds(area(0, 0, 900, 700), [])).toBeNull();
  });
});

describe('the zoom', () => {
  it.each([
    [100, 'in', 110],
    [100, 'out', 90],
    [200, 'in', 200],
    [50, 'out', 50],
    [103, 'in', 110],
  ] as const)('goes from %d %% %s to %d %%', (now, direction, then) => {
    expect(nextZoom(now, direction)).toBe(then);
  });
});

describe('the recent files', () => {
  it('have the last one in front, each once, and ten at most', () => {
    const many = Array.from({ length: 12 }, (_, place) => `/${String(place)}.tonne`);
    const recent = many.reduce<readonly string[]>(withRecent, []);

    expect(recent).toHaveLength(10);
    expect(recent[0]).toBe('/11.tonne');
    expect(withRecent(recent, '/5.tonne')[0]).toBe('/5.tonne');
    expect(withRecent(recent, '/5.tonne')).toHaveLength(10);
  });

  it('are greyed when they are missing, are folders, or lie on a drive that does not answer', async () => {
    const folder = await temporaryFolder();
    const there = join(folder, 'there.tonne');
    await writeFile(there, '');
    await mkdir(join(folder, 'folder.tonne'));
    const paths = [there, join(folder, 'gone.tonne'), join(folder, 'folder.tonne'), '//server/share/mill.tonne'];
    const never = new Promise<never>(() => undefined);

    const found = await lookFor(
      paths,
      (path) => (path.startsWith('//server') ? never : stat(path)),
      (milliseconds) => new Promise((resolve) => setTimeout(resolve, milliseconds / 10)),
    );

    expect(found.map(({ isThere }) => isThere)).toEqual([true, false, false, false]);
  });
});

describe('the log', () => {
  it('has a line for each thing that the program did', async () => {
    const path = join(await temporaryFolder(), 'data', 'log.txt');
    const log = new Log(path, () => new Date(0));

    log.note('started', '0.1.0');
    log.note('saved');
    await log.written();

    expect(await readFile(path, 'utf8')).toBe(
      '1970-01-01T00:00:00.000Z started: 0.1.0\n1970-01-01T00:00:00.000Z saved\n',
    );
  });

  it('stays within two files of 256 KB', async () => {
    const path = join(await temporaryFolder(), 'log.txt');
    await writeFile(path, 'x'.repeat(256 * 1024));
    const log = new Log(path, () => new Date(0));

    log.note('saved');
    await log.written();

    expect((await stat(`${path}.old`)).size).toBe(256 * 1024);
    expect(await readFile(path, 'utf8')).toBe('1970-01-01T00:00:00.000Z saved\n');
  });

  it('never stops the program when it cannot be written', async () => {
    const folder = await temporaryFolder();
    const log = new Log(folder, () => new Date(0));

    log.note('saved');

    await expect(log.written()).resolves.toBeUndefined();
  });

  it('names where a fault arose, and nothing that the person typed, nor where they keep their files', () => {
    const fault = new TypeError('Cannot read “Price 137.50” of /home/anna/secret.tonne');
    fault.stack = `TypeError: ${fault.message}\n    at save (/home/anna/program/dist/electron/main.cjs:120:7)\n    at async run (node:internal/x:1:1)`;

    expect(faultPlace(fault)).toBe('TypeError main.cjs:120:7');
    expect(faultPlace('Price 137.50')).toBe('not an error');
  });
});
