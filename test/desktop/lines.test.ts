import { AxeBuilder } from '@axe-core/playwright';
import { execFile } from 'node:child_process';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { projectRoot } from '../../build/lib/project-root.mjs';
import type { Driver } from './driver/driver.ts';
import { launchChromium } from './driver/stand-in/chromium.ts';
import { launchStandIn } from './driver/stand-in/launch.ts';

const run = promisify(execFile);
const distFolder = join(projectRoot, 'dist');
const demonstration = join(projectRoot, 'examples/demonstration.tonne');
const line = 'recovered.supermarket';
const rejectRate = `${line}.fine.rejectRate`;

let browser: Browser;
let driver: Driver;
let folder: string;

beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser.close());
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'lines-'));
  driver = await launchStandIn({ browser, distFolder });
  await driver.page.getByRole('link', { name: 'Lines' }).click();
  await stages().first().waitFor();
});
afterEach(async () => {
  await rm(folder, { recursive: true });
  // Fails on a violation of the page's policy, a request that leaves the program, or a dialog that no test expected.
  await driver.close();
});

const stages = () => driver.page.getByRole('group', { name: 'Stages of the line, in order' }).getByRole('button');
const stageNames = () => stages().locator('small').allTextContents();
const figure = (id: string) => driver.page.locator(`main [data-figure="${id}"]`).first();
const chosen = () => driver.page.locator('main [aria-current="true"]');

/** Saves the case on the screen under a new name and reads what was written. */
async function savedText(name: string): Promise<string> {
  const path = join(folder, name);
  driver.nextDialog({ kind: 'save', path });
  await driver.clickMenu('save-as');
  await expect.poll(() => driver.page.locator('h1').textContent()).toContain(`${name}, saved`);
  return readFile(path, 'utf8');
}

async function inTerminal(words: readonly string[]): Promise<unknown> {
  const { stdout } = await run(process.execPath, [join(distFolder, 'cli/tonne.mjs'), ...words, '--json']);
  return JSON.parse(stdout);
}

/** The line yield and the cost of the route that the terminal program works out, as the screen writes them. */
async function figuresInTerminal(path: string, ...sets: readonly string[]) {
  const options = sets.flatMap((set) => ['--set', set]);
  const balance = (await inTerminal(['line', path, 'recovered', 'supermarket', ...options])) as { yield: number };
  const { routes } = (await inTerminal(['compare', path, ...options])) as {
    routes: { id: string; totals: { costPerTonne: number } }[];
  };
  const cost = routes.find(({ id }) => id === 'recovered')?.totals.costPerTonne ?? Number.NaN;
  return { lineYield: (balance.yield * 100).toFixed(2), cost };
}

describe('the lines page', () => {
  it('answers a changed reject rate with the yield and the cost that the terminal program gives', async () => {
    const before = await figuresInTerminal(demonstration);
    expect(await figure(`${line}.yield`).textContent()).toBe(before.lineYield);
    await stages().filter({ hasText: 'Fine screen' }).click();

    await driver.page.locator(`main [data-input="${rejectRate}"]`).fill('30');
    await driver.page.keyboard.press('Enter');

    const after = await figuresInTerminal(demonstration, `${rejectRate}=30`);
    expect(after.lineYield).not.toBe(before.lineYield);
    await expect.poll(() => figure(`${line}.yield`).textContent()).toBe(after.lineYield);
    expect(await figure('recovered.cost.total').textContent()).toBe(after.cost.toFixed(2));
    const change = (after.cost - before.cost).toFixed(2);
    expect(await driver.page.locator('main .change').textContent()).toBe(`+${change} last edit`);
  });

  it('adds and removes a stage by keyboard, and two undos leave the case text as it was', async () => {
    const before = await savedText('before.tonne');
    const names = await stageNames();
    const { keyboard } = driver.page;

    await driver.page.getByRole('button', { name: 'Add a stage after it' }).focus();
    await keyboard.press('Enter');
    await driver.page.getByRole('dialog').getByRole('button', { name: 'Lightweight cleaner' }).focus();
    await keyboard.press('Enter');
    await expect.poll(stageNames).toEqual([names[0], 'Lightweight', ...names.slice(1)]);
    expect(await driver.page.getByRole('status').first().textContent()).toBe('Added as stage 2: lightweight cleaner.');

    // The hand is on the new stage: the arrow keys lead on from there, and Delete removes the one come to.
    await expect.poll(() => driver.page.evaluate(() => document.activeElement?.textContent)).toContain('Lightweight');
    await keyboard.press('ArrowRight');
    expect(await chosen().locator('small').textContent()).toBe(names[1]);
    await keyboard.press('Delete');
    await expect.poll(stageNames).toEqual([names[0], 'Lightweight', ...names.slice(2)]);

    await driver.clickMenu('undo');
    await driver.clickMenu('undo');

    await expect.poll(stageNames).toEqual(names);
    expect(await savedText('after.tonne')).toBe(before);
  });

  it('carries a stage along the train with Alt and an arrow key', async () => {
    const names = await stageNames();
    await stages().nth(1).focus();
    await stages().nth(1).click();

    await driver.page.keyboard.press('Alt+ArrowRight');

    await expect.poll(stageNames).toEqual([names[0], names[2], names[1], ...names.slice(3)]);
    expect(await chosen().locator('small').textContent()).toBe(names[1]);
    expect(await driver.page.evaluate(() => document.activeElement?.getAttribute('aria-current'))).toBe('true');
  });

  it('sends wet-strength paper to the reject when a drum takes the place of the vat', async () => {
    const leaves = figure(`${line}.pulper.rejects.wetStrength`);
    const byVat = Number(await leaves.textContent());

    await driver.page.getByLabel('Kind').selectOption({ label: 'drum pulper' });

    await expect.poll(async () => (await stageNames())[0]).toBe('Drum pulper');
    await expect.poll(async () => Number(await leaves.textContent())).toBeGreaterThan(2 * byVat);
    const path = join(folder, 'drum.tonne');
    await savedText('drum.tonne');
    const balance = (await inTerminal(['line', path, 'recovered', 'supermarket'])) as {
      stages: { leaves: { component: string; mass: number }[] }[];
    };
    const mass = balance.stages[0]?.leaves.find(({ component }) => component === 'wetStrength')?.mass ?? Number.NaN;
    expect(await leaves.textContent()).toBe(mass.toFixed(2));
  });

  it('makes a new case, and asks before it takes the place of an edited one', async () => {
    const { page } = driver;
    await page.locator(`main [data-input="${line}.pulper.removal.fibre"]`).fill('0.5');
    await page.keyboard.press('Enter');
    await expect.poll(() => driver.title()).toContain('edited');
    await driver.clickMenu('new-case');
    await page.getByRole('button', { name: 'Newsprint' }).click();
    await page.getByLabel('Tonnes a year').fill('120000');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Open the Spread' }).click();

    await page.getByRole('dialog').getByRole('button', { name: 'Leave them behind' }).click();

    await expect.poll(() => page.locator('h1').textContent()).toContain('New case, not saved');
    await page.locator('tfoot').waitFor();
    const path = join(folder, 'new.tonne');
    await savedText('new.tonne');
    const { difference } = (await inTerminal(['compare', path])) as { difference: { perTonne: number } };
    const shown = await page.locator('tfoot [data-figure="difference.total"]').textContent();
    expect(shown?.replace('\u2212', '-')).toBe(difference.perTonne.toFixed(2));
  });

  it.each(['light', 'dark'] as const)('has no fault that axe finds on any of its views, in %s', async (scheme) => {
    const { page } = driver;
    await page.emulateMedia({ colorScheme: scheme, reducedMotion: 'reduce' });
    await stages().filter({ hasText: 'Fine screen' }).click();
    await expectNoFault();

    await page.getByRole('button', { name: 'Furnish and routes' }).click();
    await expectNoFault();

    await page.getByRole('link', { name: 'New case' }).click();
    await page.getByLabel('Tonnes a year').fill('120000');
    await page.keyboard.press('Enter');
    await page.getByText('costs less by').waitFor();
    await expectNoFault();
  });
});

async function expectNoFault(): Promise<void> {
  // One frame only: the other way of working opens a page of its own, which the driver would take for a second window.
  const { passes, violations } = await new AxeBuilder({ page: driver.page }).setLegacyMode(true).analyze();

  expect(passes.map(({ id }) => id)).toEqual(expect.arrayContaining(['color-contrast', 'label']));
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).toEqual([]);
}
