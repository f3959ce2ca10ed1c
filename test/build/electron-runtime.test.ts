import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { electronRuntime, runElectron } from '../../build/electron-runtime.mjs';

let folder: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'runtime-'));
});

afterEach(() => {
  rmSync(folder, { recursive: true });
});

it('finds no runtime in a package that was never fetched', () => {
  expect(electronRuntime(folder)).toBeUndefined();
});

it('finds no runtime where only its name is left', () => {
  writeFileSync(join(folder, 'path.txt'), 'electron');
  expect(electronRuntime(folder)).toBeUndefined();
});

it('finds the program that the package names', () => {
  writeFileSync(join(folder, 'path.txt'), 'electron\n');
  mkdirSync(join(folder, 'dist'));
  writeFileSync(join(folder, 'dist/electron'), '');
  expect(electronRuntime(folder)).toBe(join(folder, 'dist/electron'));
});

it('tells a window that was closed from one that never opened', async () => {
  const node = process.execPath;
  const exits = (code: number): string => {
    const script = join(folder, `exits-${code}.cjs`);
    writeFileSync(script, `process.exit(${code})`);
    return `--require=${script}`;
  };
  // Node stands for the runtime here: it ends in the required script before it reads the project folder it is given.
  process.env['NODE_OPTIONS'] = exits(0);
  const closed = await runElectron(node, []);
  process.env['NODE_OPTIONS'] = exits(133);
  const crashed = await runElectron(node, []);
  delete process.env['NODE_OPTIONS'];

  expect(closed).toEqual({ opened: true, code: 0 });
  expect(crashed).toEqual({ opened: false, code: 133 });
  expect(await runElectron(join(folder, 'missing'), [])).toEqual({ opened: false, code: 1 });
});
