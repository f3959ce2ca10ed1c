import { AxeBuilder } from '@axe-core/playwright';
import { execFile } from 'node:child_process';
import { join } from 'node:path';
import { promisify } from 'node:util';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { projectRoot } from '../../build/lib/project-root.mjs';
import type { PlanResults } from '../../src/index.ts';
import type { Driver } from './driver/driver.ts';
import { launchChromium } from './driver/stand-in/chromium.ts';
import { launchStandIn } from './driver/stand-in/launch.ts';

const run = promisify(execFile);
const distFolder = join(projectRoot, 'dist');
const planned = join(projectRoot, 'examples/plan.tonne');

let browser: Browser;
let driver: Driver;

beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser.close());
// Fails on a violation of the page's policy, a request that leaves the program, or a dialog that no test expected.
afterEach(() => driver.close());

async function launch(words: readonly string[]): Promise<void> {
  driver = await launchStandIn({ browser, distFolder, words });
  await driver.page.locator('tfoot').waitFor();
  await driver.page.getByRole('link', { name: 'Outlay' }).click();
}

async function inTerminal(...sets: readonly string[]): Promise<PlanResults> {
  const options = sets.flatMap((set) => ['--set', set]);
  const program = join(distFolder, 'cli/tonne.mjs');
  const { stdout } = await run(process.execPath, [program, 'invest', planned, ...options, '--json']);
  return JSON.parse(stdout) as PlanResults;
}

const page = () => driver.page.locator('#outlay');
const slot = (id: string) => page().locator(`[data-input="${id}"]`).first();
const figure = (id: string) => page().locator(`[data-figure="${id}"]`).first();
const millions = (value: number): string => (value / 1e6).toFixed(1).replace('-', '\u2212');

describe('the page of the outlay', () => {
  it('shows the present value that the terminal program gives, and follows a change', async () => {
    await launch([planned]);
    await expect.poll(() => figure('investment.npv').textContent()).toBe(millions((await inTerminal()).npv));

    await slot('investment.contingency').fill('30');
    await slot('investment.contingency').press('Enter');

    const after = await inTerminal('investment.contingency=30');
    await expect.poll(() => figure('investment.npv').textContent()).toBe(millions(after.npv));
  });

  it('plans from nothing, takes the capital charge out of the statement, and says so in the headline', async () => {
    await launch([]);
    await page().getByRole('button', { name: 'Plan it' }).click();
    await figure('investment.npv').waitFor();

    await driver.page.getByRole('link', { name: 'Spread' }).click();
    await driver.page.getByRole('heading', { name: /Before the capital of the plan/u }).waitFor();

    await driver.page.getByRole('button', { name: /^Undo/u }).click();
    await expect
      .poll(() => driver.page.getByRole('heading', { name: /Before the capital of the plan/u }).count())
      .toBe(0);
  });

  it('says on the page what is invested, returned and uncertain, closes an outlet, and takes it back', async () => {
    await launch([planned]);
    await page()
      .getByText(/takes 41\.3 million EUR of capital.*As an estimate of class 4.*What could undo it/u)
      .waitFor();

    await page().getByRole('button', { name: 'Outlet years' }).click();
    await page().getByLabel('Last year in which Landfill takes residues').selectOption('6');
    await page().getByText('Landfill takes residues until 2031.').waitFor();
    await driver.page.getByRole('button', { name: /^Undo/u }).click();
    await page().getByText('Residue outlets are open in all years').waitFor();

    await slot('investment.margin').fill('110');
    await slot('investment.margin').press('Enter');
    await slot('investment.moreTonnes').fill('-2000');
    await slot('investment.moreTonnes').press('Enter');
    const after = await inTerminal('investment.margin=110', 'investment.moreTonnes=-2000');
    await expect.poll(() => figure('investment.npv').textContent()).toBe(millions(after.npv));
  });

  it.each(['light', 'dark'] as const)('has nothing that axe objects to, in the %s theme', async (colorScheme) => {
    await launch([planned]);
    await figure('investment.npv').waitFor();
    await driver.page.emulateMedia({ colorScheme });
    const { violations } = await new AxeBuilder({ page: driver.page }).analyze();

    expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
  });
});
