import { AxeBuilder } from '@axe-core/playwright';
import { execFile } from 'node:child_process';
import { join } from 'node:path';
import { promisify } from 'node:util';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { projectRoot } from '../../build/lib/project-root.mjs';
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

async function launch(): Promise<void> {
  driver = await launchStandIn({ browser, distFolder, words: [] });
  await driver.page.locator('tfoot').waitFor();
  await driver.page.getByRole('link', { name: 'What if' }).click();
  await headline('79 of 100').waitFor({ timeout: 10_000 });
}

const page = () => driver.page.locator('#what-if');
const headline = (words: string) => page().getByRole('heading', { name: words });
const press = (name: string) => page().getByRole('button', { name, exact: true }).click();

async function inTerminal<Answer>(...words: readonly string[]): Promise<Answer> {
  const { stdout } = await run(process.execPath, [join(distFolder, 'cli/tonne.mjs'), ...words, '--json'], {
    maxBuffer: 1e8,
  });
  return JSON.parse(stdout) as Answer;
}

describe('the page of what-ifs', () => {
  it('shows the chance that the terminal program gives, drawn by a crew of workers', async () => {
    await launch();
    const { belowNothing } = await inTerminal<{ belowNothing: { share: number } }>('uncertainty', demonstration);

    expect(await headline('How sure').textContent()).toContain(
      `${String(Math.round(belowNothing.share * 100))} of 100`,
    );
  });

  it('makes a tie into a scenario, on which both routes cost the same, and undo takes it back', async () => {
    await launch();
    await page()
      .getByRole('button', { name: /Make it a scenario/u })
      .first()
      .click();

    const scenarios = page().getByRole('heading', { name: 'Scenarios side by side' });
    await scenarios.waitFor();
    // Three scenarios of the demonstration, and the new one.
    await expect.poll(() => page().getByRole('columnheader').count()).toBeGreaterThan(5);
    await driver.page.getByRole('button', { name: /^Undo/u }).click();
    await press('Ties');
    await page().getByRole('heading', { name: 'Where the two routes cost the same' }).waitFor();
  });

  it('stops a million trials when asked to, keeps what was drawn before, and draws again', async () => {
    await launch();
    await press('What is drawn');
    const trials = page().getByLabel(/^Number of trials/u);
    await trials.fill('1000000');
    await trials.press('Enter');
    await page().getByRole('button', { name: 'Stop' }).click({ timeout: 10_000 });

    await page().getByText('Stopped; what is shown was drawn before').waitFor();
    expect(await headline('79 of 100').count()).toBe(1);

    await trials.fill('5000');
    await trials.press('Enter');
    await page()
      .getByText(/^5,000 trials/u)
      .waitFor({ timeout: 10_000 });
  });

  it('shows what each limit leaves, and which of them binds the recovered share', async () => {
    await launch();
    await press('Limits');

    await page()
      .getByText(/at most 55\.6\s% within all limits/u)
      .waitFor();
  });

  it('has the same numbers for whoever cannot see the pictures', async () => {
    await launch();
    for (const button of await page().getByRole('button', { name: 'Table', exact: true }).all()) await button.click();

    const { cells } = await inTerminal<{ cells: readonly (readonly number[])[] }>(
      'table',
      demonstration,
      'material.bctmp.price=445..745/7',
      'material.mixed.price=24..184/9',
    );
    const today = Math.round(cells[4]?.[2] ?? NaN);
    await expect
      .poll(() => page().getByRole('table').filter({ hasText: 'Mixed papers' }).first().textContent())
      .toContain(`\u2212${String(-today)}`);
  });

  it.each(['light', 'dark'] as const)('has nothing that axe objects to, in the %s theme', async (colorScheme) => {
    await launch();
    await driver.page.emulateMedia({ colorScheme });
    const { violations } = await new AxeBuilder({ page: driver.page }).analyze();

    expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
  });
});
