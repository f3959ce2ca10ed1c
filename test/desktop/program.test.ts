import { AxeBuilder } from '@axe-core/playwright';
import { chmod, mkdtemp, readdir, readFile, rm, utimes, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { projectRoot } from '../../build/lib/project-root.mjs';
import type { Driver, LaunchOptions } from './driver/driver.ts';
import { launchChromium } from './driver/stand-in/chromium.ts';
import { launchStandIn } from './driver/stand-in/launch.ts';

const distFolder = join(projectRoot, 'dist');
const demonstration = join(projectRoot, 'examples/demonstration.tonne');

let browser: Browser;
let driver: Driver;
let folder: string;
let data: string;

beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser.close());
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'program-'));
  data = await mkdtemp(join(tmpdir(), 'program-data-'));
});
afterEach(async () => {
  await driver.close();
  for (const each of [folder, data]) await rm(each, { recursive: true, maxRetries: 10, retryDelay: 50 });
});

/** Starts the built program over the same data folder, and waits until the figures stand on the screen. */
async function launch(words: readonly string[] = [], options: Partial<LaunchOptions> = {}): Promise<void> {
  driver = await launchStandIn({ browser, distFolder, words, dataFolder: data, ...options });
  await driver.page.locator('tfoot').waitFor();
}

async function mill(name = 'mill.tonne', title = 'Mill on file'): Promise<string> {
  const content = JSON.parse(await readFile(demonstration, 'utf8')) as { title: string };
  const path = join(folder, name);
  await writeFile(path, `${JSON.stringify({ ...content, title }, null, 2)}\n`);
  return path;
}

const slot = () => driver.page.getByRole('textbox', { name: /Mixed paper.*price/iu }).first();
const sheet = () => driver.page.getByRole('dialog');
const button = (name: string) => sheet().getByRole('button', { name });
const headline = () => driver.page.locator('h1');

async function edit(value: string): Promise<void> {
  await slot().fill(value);
  await slot().press('Enter');
  await expect.poll(() => headline().textContent()).toContain('edited');
}
const drafts = async () =>
  (await readdir(join(data, 'drafts')).catch(() => [])).filter((name) => name.endsWith('.draft'));

describe('work that was not saved', () => {
  it('is offered at the next start after a crash, also without a file, and is there again', async () => {
    await launch();
    await edit('137.5');
    await expect.poll(drafts).toHaveLength(1);
    await driver.crash();

    await launch();
    await expect.poll(() => sheet().textContent()).toContain('was not saved last time');
    expect(await sheet().textContent()).toContain('It has no file yet');
    const { violations } = await new AxeBuilder({ page: driver.page }).analyze();
    expect(violations.map(({ id }) => id)).toEqual([]);
    await button('Go on with it').click();

    await expect.poll(() => slot().inputValue()).toContain('137.5');
    expect(await headline().textContent()).toContain('not saved');
    expect(await drafts()).toHaveLength(1);
  });

  it('goes on with its file where that is as it was, says what differs, and is gone once it is saved', async () => {
    const path = await mill();
    await launch([path]);
    await edit('137.5');
    await expect.poll(drafts).toHaveLength(1);
    await driver.crash();

    await launch();
    await expect.poll(() => sheet().textContent()).toContain('“mill.tonne” is as it was when this work began');
    expect(await sheet().locator('li').allTextContents()).toEqual([expect.stringContaining('137.5')]);
    await button('Go on with it').click();
    await expect.poll(() => headline().textContent()).toContain('mill.tonne, edited');
    await driver.clickMenu('save');

    await expect.poll(() => readFile(path, 'utf8')).toContain('"137.5"');
    await expect.poll(drafts).toEqual([]);
  });

  it('never goes over a file that another program wrote since', async () => {
    const path = await mill();
    await launch([path]);
    await edit('137.5');
    await expect.poll(drafts).toHaveLength(1);
    await driver.crash();
    const theirs = (await readFile(path, 'utf8')).replace('Mill on file', 'Mill of a colleague');
    await writeFile(path, theirs);
    await utimes(path, new Date(2001, 0, 1), new Date(2001, 0, 1));

    await launch();
    await expect.poll(() => sheet().textContent()).toContain('changed by another program');
    await button('Go on with it').click();
    await expect.poll(() => headline().textContent()).toContain('not saved');
    driver.nextDialog({ kind: 'save', path: join(folder, 'mine.tonne') });
    await driver.clickMenu('save');

    await expect.poll(() => readFile(join(folder, 'mine.tonne'), 'utf8').catch(() => '')).toContain('"137.5"');
    expect(await readFile(path, 'utf8')).toBe(theirs);
  });

  it('is asked about again until the person throws it away', async () => {
    await launch();
    await edit('137.5');
    await expect.poll(drafts).toHaveLength(1);
    await driver.crash();
    await launch();
    await button('Ask me next time').click();
    await expect.poll(() => sheet().count()).toBe(0);
    await driver.close();

    await launch();
    await button('Throw it away').click();
    expect(await drafts()).toHaveLength(1);
    await button('Yes, throw it away for good').click();

    await expect.poll(drafts).toEqual([]);
    expect(await sheet().count()).toBe(0);
  });

  it('is offered again at once when only the page died', async () => {
    await launch();
    await edit('137.5');
    await expect.poll(drafts).toHaveLength(1);
    driver.nextDialog({ kind: 'message', button: 'Continue' });

    driver.loseScreen();

    await button('Go on with it').click();
    await expect.poll(() => slot().inputValue()).toContain('137.5');
  });

  it('leaves nothing behind when the window is closed on the person’s word', async () => {
    await launch();
    await edit('137.5');
    await expect.poll(drafts).toHaveLength(1);
    driver.nextDialog({ kind: 'message', button: 'Don’t save' });

    driver.closeWindow();

    await expect.poll(() => driver.hasQuit()).toBe(true);
    expect(await drafts()).toEqual([]);
  });
});

describe('a file that another program changed', () => {
  async function changedUnderUs(): Promise<string> {
    const path = await mill();
    await launch([path]);
    await edit('137.5');
    await writeFile(path, (await readFile(path, 'utf8')).replace('Mill on file', 'Mill of a colleague'));
    await utimes(path, new Date(2001, 0, 1), new Date(2001, 0, 1));
    return path;
  }

  it('is seen when the window is looked at, and read again when the person wants that', async () => {
    await changedUnderUs();

    driver.lookAtWindow();
    await button('Read it again and drop my edits').click();

    await expect.poll(() => headline().textContent()).toContain('Mill of a colleague');
    await expect.poll(() => headline().textContent()).not.toContain('edited');
  });

  it('is not saved over, until the person says so; then it is kept as .bak', async () => {
    const path = await changedUnderUs();

    await driver.clickMenu('save');
    await expect.poll(() => sheet().textContent()).toContain('was changed by another program');
    expect(await readFile(path, 'utf8')).toContain('Mill of a colleague');
    await button('Replace it and keep it as .bak').click();

    await expect.poll(() => readFile(path, 'utf8')).toContain('"137.5"');
    expect(await readFile(`${path}.bak`, 'utf8')).toContain('Mill of a colleague');
  });
});

describe('opening from outside', () => {
  it('takes a dropped case in, and asks first about unsaved edits', async () => {
    const path = await mill('dropped.tonne', 'Dropped mill');
    await launch();
    await driver.drop(path);
    await expect.poll(() => headline().textContent()).toContain('Dropped mill');
    await edit('137.5');

    await driver.drop(await mill('second.tonne', 'Second mill'));
    expect(await sheet().textContent()).toContain('has edits that are not saved');
    await button('Leave them behind').click();

    await expect.poll(() => headline().textContent()).toContain('Second mill');
    expect(driver.page.url()).toContain('index.html');
    await expect.poll(drafts).toEqual([]);
  });

  it('refuses a dropped file of another kind in words', async () => {
    const path = join(folder, 'picture.png');
    await writeFile(path, 'PNG');
    await launch();

    await driver.drop(path);

    await expect.poll(() => sheet().textContent()).toContain('not a case of this program');
  });

  it('lists what was opened and saved, across starts, and greys what is gone', async () => {
    const path = await mill();
    await launch([path]);
    await expect.poll(() => driver.menuItem('recent-1')).toEqual({ label: 'mill.tonne', enabled: true });
    expect(driver.shown().recentDocuments).toEqual([path]);
    await driver.close();
    await rm(path);

    await launch();

    await expect.poll(() => driver.menuItem('recent-1')).toEqual({ label: 'mill.tonne (not found)', enabled: false });
    await driver.clickMenu('clear-recent');
    await expect.poll(() => driver.menuItem('recent-1')).toBeNull();
    await expect.poll(async () => JSON.parse(await readFile(join(data, 'recent.json'), 'utf8')) as unknown).toEqual([]);
  });

  it('opens a recent case in a window that holds nothing yet, and else in a window of its own', async () => {
    await mill();
    const other = await mill('other.tonne', 'Other mill');
    await launch([other]);
    await expect.poll(() => driver.menuItem('recent-1')?.label).toBe('other.tonne');
    await driver.close();

    await launch();
    await driver.clickMenu('recent-1');
    await expect.poll(() => headline().textContent()).toContain('Other mill');
    expect(driver.pages()).toHaveLength(1);

    driver.openFromDesktop(join(folder, 'mill.tonne'));
    await expect.poll(() => driver.pages().length).toBe(2);
    await driver.pages()[1]?.locator('tfoot').waitFor();
  });

  it('says so where a file can only be read', async () => {
    const path = await mill();
    await chmod(path, 0o444);
    await launch([path]);

    // The superuser may write to every file, so that there the mark is missing.
    const told = process.getuid?.() === 0 ? 'mill.tonne' : 'mill.tonne, read only';
    await expect.poll(() => headline().textContent()).toContain(told);
  });
});

describe('preferences', () => {
  it('are in force at once and at the next start', async () => {
    await launch();
    await driver.clickMenu('preferences');
    await sheet().getByLabel('Numbers').selectOption('de-DE');
    await sheet().getByRole('button', { name: 'Code (EUR)' }).click();
    await sheet().getByRole('button', { name: 'Dark' }).click();
    await sheet().getByLabel('Size of everything').selectOption('125');
    const { violations } = await new AxeBuilder({ page: driver.page }).analyze();
    expect(violations.map(({ id }) => id)).toEqual([]);
    await button('Close').click();

    await expect.poll(() => driver.page.locator('footer').textContent()).toContain('1.234,5');
    expect(driver.shown()).toMatchObject({ theme: 'dark', zoom: 1.25 });
    await expect.poll(() => readFile(join(data, 'preferences.json'), 'utf8')).toContain('"zoom": 125');
    await driver.close();

    await launch();
    expect(await driver.page.locator('footer').textContent()).toContain('Numbers 1.234,5');
    expect(await driver.page.locator('footer').textContent()).toContain('Money in EUR');
    expect(driver.shown()).toMatchObject({ theme: 'dark', zoom: 1.25 });
    expect(await driver.page.locator('html').getAttribute('data-theme')).toBe('dark');
  });

  it('keep the zoom of the menu, within its bounds', async () => {
    await launch();

    for (let step = 0; step < 9; step += 1) await driver.clickMenu('zoom-in');
    await expect.poll(() => driver.shown().zoom).toBe(2);
    await expect.poll(() => readFile(join(data, 'preferences.json'), 'utf8')).toContain('"zoom": 200');
    await driver.close();

    await launch();
    expect(driver.shown().zoom).toBe(2);
    await driver.clickMenu('zoom-whole');
    await expect.poll(() => driver.shown().zoom).toBe(1);
  });

  it('cannot keep the program from starting, whatever stands in their files', async () => {
    await launch();
    await driver.close();
    for (const name of ['preferences.json', 'recent.json', 'window.json']) await writeFile(join(data, name), '{"a": [');

    await launch();

    expect(driver.shown()).toMatchObject({ theme: 'system', zoom: 1 });
  });
});

describe('the program itself', () => {
  it('opens its window where it stood, on a display that is there', async () => {
    await writeFile(
      join(data, 'window.json'),
      JSON.stringify({ bounds: { x: 2500, y: 100, width: 1000, height: 700 }, isMaximized: false }),
    );

    await launch([], { displays: [{ x: 0, y: 0, width: 1600, height: 860 }] });
    expect(driver.shown().bounds).toEqual({ x: 600, y: 100, width: 1000, height: 700 });
    driver.closeWindow();

    await expect
      .poll(async () => JSON.parse(await readFile(join(data, 'window.json'), 'utf8')) as unknown)
      .toEqual({ bounds: { x: 600, y: 100, width: 1000, height: 700 }, isMaximized: false });
  });

  it('tells its version, what it is made with and under which licences', async () => {
    await launch();

    await driver.clickMenu('about');

    await expect.poll(() => sheet().textContent()).toContain('Tonne for Tonne 0.0.0-stand-in');
    expect(await sheet().textContent()).toContain('opens no connection');
    const valibot = sheet().locator('details', { hasText: 'valibot' });
    await valibot.locator('summary').click();
    expect(await valibot.locator('pre').textContent()).toContain('MIT License');
    const { violations } = await new AxeBuilder({ page: driver.page }).analyze();
    expect(violations.map(({ id }) => id)).toEqual([]);
  });

  it('writes a log that holds nothing of the person’s', async () => {
    const path = await mill('secret.tonne', 'Secret mill');
    await launch([path]);
    await edit('137.5');
    await driver.clickMenu('save');
    await expect.poll(() => headline().textContent()).toContain('saved');

    const log = await readFile(join(data, 'log.txt'), 'utf8');

    expect(log).toMatch(/ started: 0\.0\.0-stand-in\n.* opened\n.* saved\n$/u);
    expect(log).not.toMatch(/secret|137|mill/iu);
    await driver.clickMenu('data-folder');
    expect(driver.shown().folders).toEqual([data]);
  });
});
