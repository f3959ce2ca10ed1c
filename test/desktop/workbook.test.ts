import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import ExcelJS from 'exceljs';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { projectRoot } from '../../build/lib/project-root.mjs';
import { compare, openCase } from '../../src/index.ts';
import { demonstrationText, valueOf } from '../examples/demonstration.ts';
import type { Driver } from './driver/driver.ts';
import { launchChromium } from './driver/stand-in/chromium.ts';
import { launchStandIn } from './driver/stand-in/launch.ts';

const distFolder = join(projectRoot, 'dist');
// Under the page's policy the large library is loaded by a worker of its own; a busy machine takes its time over that.
const patience = 30_000;

let browser: Browser;
let driver: Driver;
let folder: string;

beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser.close());
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'workbook-'));
  driver = await launchStandIn({ browser, distFolder, words: [] });
  await driver.page.locator('tfoot').waitFor();
});
afterEach(async () => {
  await rm(folder, { recursive: true });
  // Fails on a violation of the page's policy, a request that leaves the program, or a dialog that no test expected.
  await driver.close();
});

describe('a workbook from the window', () => {
  it.each(['button', 'menu'])('is saved by the %s with formulas and with what they come to', async (way) => {
    const target = join(folder, 'mill.xlsx');
    driver.nextDialog({ kind: 'save', path: target });
    if (way === 'button') await driver.page.getByRole('button', { name: 'Workbook' }).click();
    else await driver.clickMenu('save-workbook');
    await driver.page.getByText('Workbook saved as mill.xlsx').waitFor({ timeout: patience });
    const book = new ExcelJS.Workbook();
    await book.xlsx.readFile(target);
    const statement = book.getWorksheet('Statement');
    const whole = statement?.getColumn(1).values.indexOf('Whole cost') ?? 0;

    expect(statement?.getCell(whole, 6).formula).toBe('difference_total');
    expect(statement?.getCell(whole, 6).result).toBe(compare(valueOf(openCase(demonstrationText))).difference.perTonne);
  });
});
