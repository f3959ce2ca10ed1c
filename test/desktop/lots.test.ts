import { AxeBuilder } from '@axe-core/playwright';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { projectRoot } from '../../build/lib/project-root.mjs';
import type { Driver } from './driver/driver.ts';
import { launchChromium } from './driver/stand-in/chromium.ts';
import { launchStandIn } from './driver/stand-in/launch.ts';

const distFolder = join(projectRoot, 'dist');
const story = join(projectRoot, 'examples/stories/s4.tonne');

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
  await driver.page.getByRole('link', { name: 'Lots' }).click();
  await page().locator('.huge').waitFor();
}

const page = () => driver.page.locator('#lots');
const limit = () => page().locator('.huge').textContent();

describe('the page of lots', () => {
  it('shows the price to walk away at of the cheap wet lot, and follows the price of the other as it is typed', async () => {
    await launch([story]);
    await expect.poll(limit).toContain('118.06');

    await page().getByRole('button', { name: 'Dunnock Baling' }).first().click();
    await page().getByLabel('Price asked').fill('136');
    await expect
      .poll(() =>
        page()
          .getByRole('row', { name: /Wetherby Yard/u })
          .textContent(),
      )
      .toContain('122.');
  });

  it('prices a new lot from the keyboard alone, as one step back for each field', async () => {
    await launch([]);
    const { keyboard } = driver.page;
    await keyboard.press('Alt+n');
    await expect.poll(() => page().getByLabel('Supplier and lot').inputValue()).toBe('New lot');
    await expect
      .poll(() => driver.page.evaluate(() => document.activeElement?.getAttribute('data-lot-field')))
      .toBe('price');
    await keyboard.type('146.5');
    await keyboard.press('Tab');
    await keyboard.type('11.5 12.1 10.9');
    await keyboard.press('Tab');
    await keyboard.type('2.8');
    await keyboard.press('Enter');

    await expect
      .poll(() =>
        page()
          .getByText(/Over the readings/u)
          .count(),
      )
      .toBe(1);
    await driver.page.getByRole('button', { name: /Undo/u }).click();
    await expect.poll(() => page().getByLabel('Unusable').inputValue()).toBe('');
    await expect.poll(() => page().getByLabel('Price asked').inputValue()).toBe('146.5');
  });

  it('hides what is the buyer’s own at one key, and shows it again', async () => {
    await launch([]);
    await driver.page.keyboard.press('F9');

    await expect.poll(() => page().getByText('Pay no more than', { exact: true }).count()).toBe(0);
    expect(await page().innerText()).not.toMatch(/Nordmere|Tallow|True cost|virgin/u);

    await driver.page.keyboard.press('F9');
    await expect.poll(() => page().getByText('Pay no more than', { exact: true }).count()).toBe(1);
  });

  it('solves for the cheapest blend within limits under the strict policy, and names the limit that none can keep', async () => {
    await launch([]);
    await page().getByRole('button', { name: 'Blend lots' }).click();
    const sheet = driver.page.getByRole('dialog');
    await expect.poll(() => sheet.getByText(/^Cheapest:/u).count(), { timeout: 20_000 }).toBe(1);

    await sheet.getByLabel('Moisture bought, at most').fill('7');
    await sheet.getByLabel('Moisture bought, at most').press('Enter');
    await expect
      .poll(() => sheet.innerText(), { timeout: 20_000 })
      .toContain('No blend meets the limits: this one is the reason');
  });

  it('has nothing that an accessibility checker objects to', async () => {
    await launch([]);
    const { violations } = await new AxeBuilder({ page: driver.page }).analyze();

    expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html.slice(0, 120))])).toEqual([]);
  });
});
