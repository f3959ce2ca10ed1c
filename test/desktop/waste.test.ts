import { AxeBuilder } from '@axe-core/playwright';
import { execFile } from 'node:child_process';
import { join } from 'node:path';
import { promisify } from 'node:util';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { projectRoot } from '../../build/lib/project-root.mjs';
import type { Footprint } from '../../src/index.ts';
import type { Driver } from './driver/driver.ts';
import { launchChromium } from './driver/stand-in/chromium.ts';
import { launchStandIn } from './driver/stand-in/launch.ts';

const run = promisify(execFile);
const distFolder = join(projectRoot, 'dist');
const demonstration = join(projectRoot, 'examples/demonstration.tonne');

let browser: Browser;
let driver: Driver;

beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser.close());
// Fails on a violation of the page's policy, a request that leaves the program, or a dialog that no test expected.
afterEach(() => driver.close());

/** Starts the built program and turns to the page by the rail. */
async function launch(): Promise<void> {
  driver = await launchStandIn({ browser, distFolder, words: [] });
  await driver.page.locator('tfoot').waitFor();
  await driver.page.getByRole('link', { name: 'Waste and carbon' }).click();
  await driver.page.locator('#waste table').first().waitFor();
}

async function inTerminal<Answer>(verb: 'footprint' | 'compare', ...sets: readonly string[]): Promise<Answer> {
  const options = sets.flatMap((set) => ['--set', set]);
  const program = join(distFolder, 'cli/tonne.mjs');
  const { stdout } = await run(process.execPath, [program, verb, demonstration, ...options, '--json']);
  return JSON.parse(stdout) as Answer;
}

async function recoveredInTerminal(...sets: readonly string[]): Promise<Footprint['routes'][number]> {
  const { routes } = await inTerminal<Pick<Footprint, 'routes'>>('footprint', ...sets);
  const found = routes.find(({ id }) => id === 'recovered');
  if (found === undefined) throw new Error('The terminal program knows no recovered route.');
  return found;
}

const figure = (id: string) => driver.page.locator(`#waste [data-figure="${id}"]`).first();
const slot = (id: string) => driver.page.locator(`#waste [data-input="${id}"]`).first();
const selectStream = (name: string) => driver.page.getByRole('button', { name, exact: true }).click();
const fixed = (value: number, decimals: number): string =>
  new Intl.NumberFormat('en', { minimumFractionDigits: decimals, maximumFractionDigits: decimals })
    .format(value)
    .replace('-', '\u2212');

describe('the page of waste and carbon', () => {
  it('shows the masses, heat and carbon that the terminal program gives', async () => {
    await launch();
    const expected = await recoveredInTerminal();

    expect(await figure('recovered.residue.all.wet').textContent()).toBe(fixed(expected.waste.wet * 1000, 2));
    expect(await figure('recovered.heat.total').textContent()).toBe(fixed(expected.heat / 0.0036, 0));
    expect(await figure('recovered.footprint.total').textContent()).toBe(fixed(expected.total, 1));
    expect(await figure('recovered.landfill.methane.20').textContent()).toBe(
      fixed(expected.landfillMethane.years20, 1),
    );
  });

  it('moves tonnes, heat, cost and carbon as the terminal program does when a stream goes to the own boiler', async () => {
    const set = 'residue.rope.to.boiler=70';
    await launch();
    await selectStream('Rope tail and bale wire');
    const before = await recoveredInTerminal();

    await slot('residue.rope.to.boiler').fill('70');
    await slot('residue.rope.to.boiler').press('Enter');

    const after = await recoveredInTerminal(set);
    const rope = after.streams.find(({ stream }) => stream === 'rope');
    expect(rope?.cost).not.toBe(before.streams.find(({ stream }) => stream === 'rope')?.cost);
    expect(after.heatFromResidues).not.toBe(before.heatFromResidues);
    await expect
      .poll(() => figure('recovered.residue.all.wet.landfill').textContent())
      .toBe(
        fixed((after.waste.destinations.find(({ destination }) => destination === 'landfill')?.wet ?? 0) * 1000, 2),
      );
    expect(await figure('recovered.residue.rope.wayCost').textContent()).toBe(fixed(rope?.cost ?? Number.NaN, 2));
    expect(await figure('recovered.residue.rope.wayCarbon').textContent()).toBe(fixed(rope?.carbon ?? Number.NaN, 1));
    expect(await figure('recovered.heat.fromResidues').textContent()).toBe(fixed(after.heatFromResidues / 0.0036, 0));
    expect(await figure('recovered.footprint.total').textContent()).toBe(fixed(after.total, 1));

    const { difference } = await inTerminal<{ difference: { perTonne: number } }>('compare', set);
    await driver.page.getByRole('link', { name: 'Spread' }).click();
    expect(await driver.page.locator('tfoot [data-figure="difference.total"]').textContent()).toBe(
      `${difference.perTonne < 0 ? '' : '+'}${fixed(difference.perTonne, 2)}`,
    );
  });

  it('refuses a factor without a source in a sentence, and takes it with one', async () => {
    await launch();
    await driver.page.locator('[data-factors="fuel"]').click();
    const before = await figure('recovered.footprint.total').textContent();

    await slot('carbon.fuel').fill('60');
    await slot('carbon.fuel').press('Enter');
    const alert = driver.page.getByRole('alert');
    await expect.poll(() => alert.textContent()).toContain('must name its source');
    await alert.getByRole('button', { name: 'Put in force' }).click();
    await expect.poll(() => alert.textContent()).toContain('must name its source');
    expect(await figure('recovered.footprint.total').textContent()).toBe(before);

    await alert.getByLabel('Source and year').fill('Supplier, certificate of 2025');
    await alert.getByLabel('Source and year').press('Enter');

    await expect.poll(() => alert.count()).toBe(0);
    expect(await slot('carbon.fuel').inputValue()).toBe('60');
    expect(await figure('recovered.footprint.total').textContent()).not.toBe(before);
    await driver.page.locator('[data-factor="carbon.fuel"]').click();
    await expect.poll(() => driver.page.locator('#slip').textContent()).toContain('Supplier, certificate of 2025');
  });

  it('takes the grid of another region, and undo takes it back', async () => {
    await launch();
    const before = await figure('recovered.footprint.power').textContent();

    await driver.page.getByLabel('Grid').selectOption('FRA');
    // 0.04418 kg/kWh (@tgwf/co2 0.19.0) times the electricity of a tonne.
    const { electricity } = await recoveredInTerminal();
    await expect.poll(() => figure('recovered.footprint.power').textContent()).toBe(fixed(electricity * 0.04418, 1));

    await driver.clickMenu('undo');
    await expect.poll(() => figure('recovered.footprint.power').textContent()).toBe(before);
  });

  it('counts no avoided landfill, and shows it beside only when asked', async () => {
    await launch();
    const memo = figure('recovered.landfill.avoidedMemo');
    const total = await figure('recovered.footprint.total').textContent();
    expect(await memo.count()).toBe(0);

    await driver.page.getByRole('button', { name: 'Show beside' }).click();

    const { avoidedLandfill } = await recoveredInTerminal();
    expect(await memo.textContent()).toBe(fixed(avoidedLandfill.amount, 1));
    expect(await figure('recovered.footprint.total').textContent()).toBe(total);
  });

  it('copies the table as cells, without asking for a permission', async () => {
    await launch();

    await driver.page.getByRole('region', { name: 'Carbon' }).getByRole('button', { name: 'Copy as cells' }).click();

    // The system's clipboard may take its time on a busy machine.
    await expect.poll(() => driver.page.getByRole('button', { name: 'Copied' }).count(), { timeout: 3000 }).toBe(1);
  });

  it('shows whose grid figures they are and that none of it is a public claim', async () => {
    await launch();

    const words = await driver.page.locator('#waste').textContent();
    expect(words).toContain('CC BY-SA 4.0');
    expect(words).toContain('For internal use.');
    expect(words).toContain('Too close to call');
  });

  it.each(['light', 'dark'] as const)('has no fault that axe finds, with factors unfolded, in %s', async (scheme) => {
    await launch();
    await driver.page.emulateMedia({ colorScheme: scheme, reducedMotion: 'reduce' });
    await driver.page.locator('[data-factors="landfill"]').click();
    await driver.page.getByRole('button', { name: 'Show beside' }).click();
    await figure('recovered.footprint.fuel').click();
    await driver.page.locator('#slip ol').waitFor();

    // One frame only: the other way of working opens a page of its own, which the driver would take for a second window.
    const { passes, violations } = await new AxeBuilder({ page: driver.page }).setLegacyMode(true).analyze();

    expect(passes.map(({ id }) => id)).toEqual(expect.arrayContaining(['color-contrast', 'label', 'td-headers-attr']));
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).toEqual([]);
  });
});
