import { AxeBuilder } from '@axe-core/playwright';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { projectRoot } from '../../build/lib/project-root.mjs';
import type { Driver } from './driver/driver.ts';
import { launchChromium } from './driver/stand-in/chromium.ts';
import { launchStandIn } from './driver/stand-in/launch.ts';

const distFolder = join(projectRoot, 'dist');
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
}
const open = (): Promise<void> => driver.page.getByRole('link', { name: 'Measured' }).click();
const headline = (): Promise<string> => driver.page.locator('.verdict h2').innerText();
const group = (name: string) => driver.page.getByRole('group', { name });

describe('the five questions', () => {
  it('stand before the headline until all are answered yes, and a no is named there', async () => {
    await launch();
    expect(await headline()).toMatch(/^If both make the same product \(not confirmed\)/u);

    await driver.page.getByRole('link', { name: /not confirmed/u }).click();
    const questions = ['Food contact', 'Strength at the stated grammage', 'Brightness and shade', 'Surface and print'];
    for (const name of questions) await group(name).getByRole('button', { name: 'Yes', exact: true }).click();
    await driver.page.getByText('Not confirmed: one of five is open.').waitFor();
    await group('Customer approval').getByRole('button', { name: 'No', exact: true }).click();
    await driver.page.getByText('Not the same: one answered no.').waitFor();
    await driver.page.getByRole('link', { name: 'Spread' }).click();
    expect(await headline()).toContain('(answered no: customer approval)');

    await driver.page.getByRole('link', { name: /customer approval/u }).click();
    await group('Customer approval').getByRole('button', { name: 'Yes', exact: true }).click();
    await driver.page.getByText('Confirmed: all five are answered yes.').waitFor();
    await driver.page.getByRole('link', { name: 'Spread' }).click();
    expect(await headline()).toBe('Recovered middle ply costs less by');

    await driver.page.getByRole('button', { name: /^Undo/u }).click();
    await expect.poll(headline).toContain('(answered no: customer approval)');
  });
});

describe('measured figures', () => {
  it('are typed with a unit, show their gap, and take their period along', async () => {
    await launch();
    await open();
    const slot = driver.page.locator('[data-input="actual.virgin.electricity.total"]');
    await slot.fill('80000 MWh/a');
    await slot.press('Enter');

    const row = driver.page.locator('tr', { has: slot });
    // By hand: 89,002 MWh computed against 80,000 is 11.3 % more.
    await expect.poll(() => row.innerText()).toContain('+11.3');
    await row.getByRole('textbox', { name: 'Electricity needed: period' }).fill('2025');
    await row.getByRole('textbox', { name: 'Electricity needed: period' }).press('Enter');
    await driver.page.getByRole('button', { name: /to look at/u }).click();
    await driver.page.getByText(/measured 80,?000 MWh\/year \(2025\): 11\.3 % above/u).waitFor();
  });
});

describe('the price of a fibre', () => {
  it('says what it means by the bone-dry tonne while it is typed', async () => {
    await launch();
    const slot = driver.page.locator('[data-input="material.bskp.price"]').first();
    await slot.click();
    await slot.fill('600 €/air-dry short ton');

    await expect.poll(() => driver.page.locator('output').innerText()).toBe('= 734.87 €/bdt');
  });
});

it.each(['light', 'dark'] as const)('has nothing that axe objects to, in the %s theme', async (colorScheme) => {
  await launch();
  await open();
  await driver.page.emulateMedia({ colorScheme });
  await driver.page.getByText('Nothing measured is entered yet.').waitFor();
  const { violations } = await new AxeBuilder({ page: driver.page }).analyze();

  expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
});
