import { AxeBuilder } from '@axe-core/playwright';
import { execFile } from 'node:child_process';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
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
const price = 'material.mixed.price';

let browser: Browser;
let driver: Driver;
let folder: string;

beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser.close());
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'spread-'));
});
afterEach(async () => {
  await rm(folder, { recursive: true });
  // Fails on a violation of the page's policy, a request that leaves the program, or a dialog that no test expected.
  await driver.close();
});

/** Starts the built program, and waits until the figures stand on the screen. */
async function launch(words: readonly string[] = []): Promise<void> {
  driver = await launchStandIn({ browser, distFolder, words });
  await driver.page.locator('tfoot').waitFor();
}

const slot = (id: string) => driver.page.locator(`main [data-input="${id}"]`);
const difference = () => driver.page.locator('tfoot [data-figure="difference.total"]');
const sheet = () => driver.page.getByRole('dialog');

/** The difference that the terminal program works out for a case, as the screen writes it. */
async function differenceInTerminal(path: string, ...sets: readonly string[]): Promise<string> {
  const options = sets.flatMap((set) => ['--set', set]);
  const program = join(distFolder, 'cli/tonne.mjs');
  const { stdout } = await run(process.execPath, [program, 'compare', path, ...options, '--json']);
  const { perTonne } = (JSON.parse(stdout) as { difference: { perTonne: number } }).difference;
  return `${perTonne < 0 ? '\u2212' : '+'}${Math.abs(perTonne).toFixed(2)}`;
}

async function typePrice(typed: string): Promise<void> {
  await slot(price).fill(typed);
  await slot(price).press('Enter');
}

describe('the spread', () => {
  it('opens on the demonstration, with the difference that the terminal program gives', async () => {
    await launch();

    expect(await difference().textContent()).toBe(await differenceInTerminal(demonstration));
  });

  it('answers a typed price with the difference that the terminal program gives for the same price', async () => {
    await launch();
    const before = await difference().textContent();

    await typePrice('137.50');

    const expected = await differenceInTerminal(demonstration, `${price}=137.50`);
    expect(expected).not.toBe(before);
    await expect.poll(() => difference().textContent()).toBe(expected);
  });

  it('saves the typed price to the disk, where the terminal program reads it', async () => {
    const path = join(folder, 'mill.tonne');
    await launch();
    await typePrice('137.50');
    await expect.poll(() => driver.title()).toContain('edited');
    driver.nextDialog({ kind: 'save', path });

    await driver.clickMenu('save');

    await expect.poll(() => driver.page.locator('h1').textContent()).toContain('mill.tonne, saved');
    const saved = JSON.parse(await readFile(path, 'utf8')) as { inputs: Record<string, { value: string }> };
    expect(saved.inputs[price]?.value).toBe('137.50');
    expect(await difference().textContent()).toBe(await differenceInTerminal(path));
  });

  it('takes a typed price back with undo and puts it in force again with redo', async () => {
    await launch();
    const before = await difference().textContent();
    await typePrice('137.50');
    await expect.poll(() => difference().textContent()).not.toBe(before);
    const after = await difference().textContent();

    await driver.clickMenu('undo');
    await expect.poll(() => difference().textContent()).toBe(before);

    await driver.clickMenu('redo');
    await expect.poll(() => difference().textContent()).toBe(after);
  });

  it('saves a price that is still being typed', async () => {
    const path = join(folder, 'mill.tonne');
    await launch();
    driver.nextDialog({ kind: 'save', path });
    await slot(price).fill('68+4.50');

    await driver.clickMenu('save');

    await expect.poll(() => driver.page.locator('h1').textContent()).toContain('mill.tonne, saved');
    expect(await readFile(path, 'utf8')).toContain('"72.50"');
  });

  it('asks which number is meant rather than guess, and keeps the figure in force until it is told', async () => {
    await launch();
    const before = await difference().textContent();

    await typePrice('1,234');

    expect(await driver.page.getByRole('alert').textContent()).toContain('1,234 can mean 1.234 or 1234. Which one?');
    expect(await difference().textContent()).toBe(before);

    await driver.page.getByRole('alert').getByRole('button', { name: '1234' }).click();
    await expect
      .poll(() => difference().textContent())
      .toBe(await differenceInTerminal(demonstration, `${price}=1234`));
  });

  it('lists what is wrong with a file, keeps the case on the screen, and never saves over that file', async () => {
    const broken = join(folder, 'broken.tonne');
    const elsewhere = join(folder, 'elsewhere.tonne');
    await writeFile(broken, '{"format":"tonne","version":1}');
    await launch();
    const before = await difference().textContent();
    driver.nextDialog({ kind: 'open', path: broken });

    await driver.clickMenu('open');

    await expect.poll(() => sheet().textContent()).toContain('“broken.tonne” cannot be read as a case');
    expect(await sheet().getByRole('listitem').count()).toBeGreaterThan(1);
    await sheet().getByRole('button', { name: 'Go on with this case' }).click();
    expect(await difference().textContent()).toBe(before);

    driver.nextDialog({ kind: 'save', path: elsewhere });
    await driver.clickMenu('save');
    await expect.poll(() => driver.page.locator('h1').textContent()).toContain('elsewhere.tonne, saved');
    expect(await readFile(broken, 'utf8')).toBe('{"format":"tonne","version":1}');
  });

  it('shows how a figure was worked out, and puts that away with Escape', async () => {
    await launch();
    const figure = driver.page.locator('tfoot [data-figure="recovered.cost.total"]');
    await figure.press('Enter');
    const slip = driver.page.locator('#slip');
    await slip.getByText('Whole cost', { exact: true }).waitFor();

    expect(await slip.textContent()).toContain(`${(await figure.textContent()) ?? ''} € a tonne of product`);

    await driver.page.keyboard.press('Escape');
    await expect.poll(() => slip.count()).toBe(0);
    expect(await driver.page.evaluate(() => document.activeElement?.getAttribute('data-figure'))).toBe(
      'recovered.cost.total',
    );
  });

  it.each(['light', 'dark'] as const)('has no fault that axe finds, with a figure explained, in %s', async (scheme) => {
    await launch();
    await driver.page.emulateMedia({ colorScheme: scheme, reducedMotion: 'reduce' });
    await driver.page.locator('tfoot [data-figure="recovered.cost.total"]').click();
    await driver.page.locator('#slip ol').waitFor();

    // One frame only: the other way of working opens a page of its own, which the driver would take for a second window.
    const { passes, violations } = await new AxeBuilder({ page: driver.page }).setLegacyMode(true).analyze();

    expect(passes.map(({ id }) => id)).toEqual(expect.arrayContaining(['color-contrast', 'label', 'td-headers-attr']));
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).toEqual([]);
  });
});
