import { AxeBuilder } from '@axe-core/playwright';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { projectRoot } from '../../build/lib/project-root.mjs';
import { machineEffectOf, openCase } from '../../src/index.ts';
import { readFileSync } from 'node:fs';
import type { Driver } from './driver/driver.ts';
import { launchChromium } from './driver/stand-in/chromium.ts';
import { launchStandIn } from './driver/stand-in/launch.ts';

const distFolder = join(projectRoot, 'dist');
const example = join(projectRoot, 'examples/machine.tonne');

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
  await driver.page.getByRole('banner').getByRole('button', { name: 'Machine effect', exact: true }).click();
  await figure('difference.machineEffect.soldOut.left').waitFor();
}

const page = () => driver.page.locator('#machine');
const slot = (id: string) => page().locator(`[data-input="${id}"]`);
const figure = (id: string) => page().locator(`[data-figure="${id}"]`).first();
const headline = () => page().getByRole('heading', { level: 2 }).first().textContent();

function stepsOf(file: string): ReturnType<typeof machineEffectOf> {
  const opened = openCase(readFileSync(file, 'utf8'));
  if (!opened.ok) throw new Error(JSON.stringify(opened.problems));
  return machineEffectOf(opened.value);
}

describe('the page of the machine effect', () => {
  it('shows the steps of the engine, and throws the switch as an edit that goes back', async () => {
    await launch([example]);
    const { soldOut, ordersLimited } = stepsOf(example);
    expect(await figure(soldOut.left.quantityId).textContent()).toBe(soldOut.left.shown.replace('-', ''));
    expect(await headline()).toContain('The machine takes back');

    await page().getByRole('button', { name: 'Orders limited', exact: true }).click();
    await expect.poll(headline).toContain(ordersLimited.takenBack.shown);
    await driver.page.getByRole('button', { name: /^Undo/u }).click();
    await expect.poll(headline).toContain(soldOut.takenBack.shown);
  });

  it('opens the working of a step in the slip', async () => {
    await launch([example]);
    await figure('difference.machineEffect.soldOut.slower').click();

    await driver.page.locator('#slip').getByText('Slower machine, sold out').first().waitFor();
  });

  it('says that nothing is entered, asks for a price once tonnes are lost, and then answers', async () => {
    await launch([]);
    expect(await headline()).toContain('No machine effect is entered');

    await page().getByRole('button', { name: 'Sold out', exact: true }).click();
    await slot('recovered.machine.speed').fill('98');
    await slot('recovered.machine.speed').press('Enter');
    await expect.poll(headline).toContain('give the price of the product');

    await slot('product.price').fill('890');
    await slot('product.price').press('Enter');
    await expect.poll(headline).toContain('The machine takes back');
  });

  it.each(['light', 'dark'] as const)('has nothing that axe objects to, in the %s theme', async (colorScheme) => {
    await launch([example]);
    await driver.page.emulateMedia({ colorScheme });
    const { violations } = await new AxeBuilder({ page: driver.page }).analyze();

    expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
  });
});
