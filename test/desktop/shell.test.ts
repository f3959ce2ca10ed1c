import { mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type {} from '../../renderer/host/desktop-host.ts';
import type { Driver } from './driver/driver.ts';
import { launchChromium } from './driver/stand-in/chromium.ts';
import { launchStandIn } from './driver/stand-in/launch.ts';
import { buildProbeProgram, type ProbeProgram } from './probe-program.ts';

let browser: Browser;
let program: ProbeProgram;
let driver: Driver;
let folder: string;

beforeAll(async () => {
  program = await buildProbeProgram();
  browser = await launchChromium();
});
afterAll(async () => {
  await browser.close();
  await program.remove();
});

/** Waits for exactly these, and takes them; the browser reports them a moment after the deed. */
async function expectViolations(...expected: string[]): Promise<void> {
  const seen: string[] = [];
  const takeMore = (): string[] => {
    seen.push(...driver.takePolicyViolations());
    return seen;
  };
  await expect.poll(takeMore).toEqual(expected);
}

/** Starts the program; the inline script of its page is always blocked, and noted so. */
async function launch(words: readonly string[] = []): Promise<void> {
  driver = await launchStandIn({ browser, distFolder: program.distFolder, words, systemLocale: 'de-AT' });
  await driver.page.locator('[data-ready]').waitFor();
  await expectViolations('script-src-elem: inline');
}

beforeEach(async () => {
  folder = join(program.distFolder, 'cases');
  await mkdir(folder);
});
afterEach(async () => {
  await rm(folder, { recursive: true });
  await driver.close();
});

const saveCase = (text: string) => driver.page.evaluate((given) => window.tonneHost?.saveCase(given, 'Mill'), text);
const setEdited = (edited: boolean) =>
  driver.page.evaluate((given) => window.tonneHost?.setEdited(given, 'Mill'), edited);
const openCase = () => driver.page.evaluate(() => window.tonneHost?.openCase());
const attempt = async (id: string) => {
  await driver.page.click(`#${id}`);
  return driver.page.locator('output:not(:empty)').textContent();
};

describe('the verbs of the host', () => {
  it('are all that the page gets, as plain functions', async () => {
    await launch();

    const seen = await driver.page.evaluate(() => ({
      host: Object.entries(window.tonneHost ?? {}).map(([name, value]) => `${name}: ${typeof value}`),
      node: [
        typeof Reflect.get(window, 'require'),
        typeof Reflect.get(window, 'process'),
        typeof Reflect.get(window, 'module'),
      ],
    }));

    expect(seen).toEqual({
      host: [
        'kind: string',
        'numberLocale: function',
        'startingCase: function',
        'openCase: function',
        'openGiven: function',
        'openDropped: function',
        'reloadCase: function',
        'saveCase: function',
        'saveCaseOver: function',
        'saveCaseAs: function',
        'saveWorkbook: function',
        'setEdited: function',
        'keepDraft: function',
        'leftDrafts: function',
        'takeDraft: function',
        'forgetDraft: function',
        'preferences: function',
        'setPreferences: function',
        'versions: function',
        'onCommand: function',
      ],
      node: ['undefined', 'undefined', 'undefined'],
    });
  });

  it('tell the region whose numbers the person reads, and that no case was named', async () => {
    await launch();

    expect(await driver.page.evaluate(() => window.tonneHost?.numberLocale())).toBe('de-AT');
    expect(await driver.page.evaluate(() => window.tonneHost?.startingCase())).toBeNull();
  });

  it('open the case that the person chooses', async () => {
    await writeFile(join(folder, 'mill.tonne'), '{"name":"Übung"}');
    await launch();
    driver.nextDialog({ kind: 'open', path: join(folder, 'mill.tonne') });

    expect(await openCase()).toEqual({ kind: 'read', name: 'mill.tonne', text: '{"name":"Übung"}' });
  });

  it('take a closed dialog for an answer', async () => {
    await launch();
    driver.nextDialog({ kind: 'open', path: null });
    driver.nextDialog({ kind: 'save', path: null });

    expect(await openCase()).toEqual({ kind: 'cancelled' });
    expect(await saveCase('text')).toEqual({ kind: 'cancelled' });
    expect(await readdir(folder)).toEqual([]);
  });

  it('save to a new place, then there again, and keep the version before as .bak', async () => {
    await launch();
    driver.nextDialog({ kind: 'save', path: join(folder, 'mill.tonne') });

    expect(await saveCase('first')).toEqual({ kind: 'saved', name: 'mill.tonne' });
    expect(await saveCase('second')).toEqual({ kind: 'saved', name: 'mill.tonne' });

    expect(driver.dialogsSeen().map((dialog) => dialog.suggestedName)).toEqual(['Mill.tonne']);
    expect(await readFile(join(folder, 'mill.tonne'), 'utf8')).toBe('second');
    expect(await readFile(join(folder, 'mill.tonne.bak'), 'utf8')).toBe('first');
    expect((await readdir(folder)).sort()).toEqual(['mill.tonne', 'mill.tonne.bak']);
  });

  it('keep the work beside the file when it cannot be put in place', async () => {
    // A folder of the backup's name lets the text be written, but not the old version be copied.
    await writeFile(join(folder, 'mill.tonne'), 'old');
    await mkdir(join(folder, 'mill.tonne.bak'));
    await launch();
    driver.nextDialog({ kind: 'open', path: join(folder, 'mill.tonne') });
    await openCase();

    const outcome = await saveCase('new');

    const kept = (await readdir(folder)).find((name) => name.startsWith('mill.unsaved-')) ?? 'no file';
    expect(outcome).toMatchObject({
      kind: 'failed',
      sentence: expect.stringContaining(`kept beside it as “${kept}”`) as string,
    });
    expect(await readFile(join(folder, kept), 'utf8')).toBe('new');
    expect(await readFile(join(folder, 'mill.tonne'), 'utf8')).toBe('old');
  });

  it('write the bytes of a workbook as they are', async () => {
    await launch();
    driver.nextDialog({ kind: 'save', path: join(folder, 'mill.xlsx') });

    const outcome = await driver.page.evaluate(() =>
      window.tonneHost?.saveWorkbook(new Uint8Array([0x50, 0x4b, 0, 255]), 'Mill'),
    );

    expect(outcome).toEqual({ kind: 'saved', name: 'mill.xlsx' });
    expect(await readFile(join(folder, 'mill.xlsx'))).toEqual(Buffer.from([0x50, 0x4b, 0, 255]));
  });
});

describe('the menu', () => {
  it('sends its commands to the screen', async () => {
    await launch();

    for (const id of ['open', 'save', 'save-as', 'save-workbook', 'demonstration', 'undo', 'redo'])
      await driver.clickMenu(id);

    const received = await driver.page.locator('li').allTextContents();
    expect(received).toEqual(['open', 'save', 'save-as', 'save-workbook', 'demonstration', 'undo', 'redo']);
  });

  it('quits', async () => {
    await launch();

    await driver.clickMenu('quit');

    expect(driver.hasQuit()).toBe(true);
  });
});

describe('the window', () => {
  it('shows in its title whether there are unsaved edits', async () => {
    await launch();

    await setEdited(true);
    expect(driver.title()).toBe('Mill (edited) - Tonne for Tonne');
    await setEdited(false);
    expect(driver.title()).toBe('Mill - Tonne for Tonne');
  });

  it('closes without a question when nothing is unsaved', async () => {
    await launch();

    driver.closeWindow();

    expect(driver.hasQuit()).toBe(true);
  });

  it('asks before unsaved edits are lost, and stays when the person cancels', async () => {
    await launch();
    await setEdited(true);
    driver.nextDialog({ kind: 'message', button: 'Cancel' });

    await driver.clickMenu('quit');

    expect(driver.dialogsSeen()).toMatchObject([
      { message: 'Save the changes to “Mill” before closing?', buttons: ['Save', 'Don’t save', 'Cancel'] },
    ]);
    expect(driver.hasQuit()).toBe(false);
  });

  it('closes when the person gives the edits up', async () => {
    await launch();
    await setEdited(true);
    driver.nextDialog({ kind: 'message', button: 'Don’t save' });

    driver.closeWindow();

    await expect.poll(() => driver.hasQuit()).toBe(true);
  });

  it('lets the screen save, and closes once the work is on the disk', async () => {
    await launch();
    await setEdited(true);
    driver.nextDialog({ kind: 'message', button: 'Save' });
    driver.nextDialog({ kind: 'save', path: join(folder, 'mill.tonne') });

    driver.closeWindow();
    await driver.page.locator('li', { hasText: 'save' }).waitFor();
    // The screen answers the command; its page goes away with the window before the answer arrives.
    await saveCase('work').catch(() => undefined);

    expect(driver.hasQuit()).toBe(true);
    expect(await readFile(join(folder, 'mill.tonne'), 'utf8')).toBe('work');
  });

  it('holds a log-off up only while edits are unsaved', async () => {
    await launch();
    expect(driver.logOff()).toBe(false);
    await setEdited(true);
    driver.nextDialog({ kind: 'message', button: 'Cancel' });

    expect(driver.logOff()).toBe(true);
    await expect.poll(() => driver.dialogsSeen()).toHaveLength(1);
  });

  it('is drawn again from what is on the disk when its page dies', async () => {
    await writeFile(join(folder, 'mill.tonne'), 'saved');
    await launch([join(folder, 'mill.tonne')]);
    await driver.page.evaluate(() => (document.documentElement.dataset['ready'] = 'before'));
    driver.nextDialog({ kind: 'message', button: 'Continue' });

    driver.loseScreen();

    await driver.page.locator('[data-ready=yes]').waitFor();
    expect(await driver.page.evaluate(() => window.tonneHost?.startingCase())).toMatchObject({ text: 'saved' });
    await expectViolations('script-src-elem: inline');
  });

  it('starts with the case named on the command line', async () => {
    await writeFile(join(folder, 'mill.tonne'), 'named');
    await launch([join(folder, 'mill.tonne')]);

    expect(await driver.page.evaluate(() => window.tonneHost?.startingCase())).toEqual({
      kind: 'read',
      name: 'mill.tonne',
      text: 'named',
    });
  });

  it('opens a case that is double-clicked later in a window of its own, and only once', async () => {
    await writeFile(join(folder, 'other.tonne'), 'other');
    await launch();

    driver.startAgain(['other.tonne'], folder);
    await expect.poll(() => driver.pages().length).toBe(2);
    driver.startAgain([join(folder, 'other.tonne')], '/');
    driver.startAgain([], '/');

    const second = driver.pages()[1];
    await second?.locator('[data-ready]').waitFor();
    expect(await second?.evaluate(() => window.tonneHost?.startingCase())).toMatchObject({
      kind: 'read',
      text: 'other',
    });
    expect(driver.pages()).toHaveLength(2);
    await expectViolations('script-src-elem: inline');
  });
});

describe('the lockdown of the page', () => {
  it('blocks code made from text', async () => {
    await launch();

    expect(await attempt('eval')).toBe('EvalError');
    expect(await attempt('function')).toBe('EvalError');
    await expectViolations('script-src: eval', 'script-src: eval');
  });

  it('blocks scripts within the page', async () => {
    await launch();

    expect(await driver.page.evaluate(() => Reflect.get(window, 'inlineRan') as unknown)).toBeUndefined();
    expect(await attempt('element')).toBe('blocked');
    await expectViolations('script-src-elem: inline');
  });

  it.each([
    ['fetch', 'TypeError', 'connect-src: https://example.org/data'],
    ['image', 'blocked', 'img-src: https://example.org/picture.png'],
    ['frame', 'appended', 'frame-src: https://tonne.invalid/index.html'],
  ])('lets no %s through', async (id, shown, violation) => {
    await launch();

    expect(await attempt(id)).toBe(shown);

    await expectViolations(violation);
    expect(driver.requests().filter((url) => !url.startsWith('app://tonne/'))).toEqual([]);
  });

  it('sends no form', async () => {
    await launch();

    // A click as Playwright makes it would wait for the navigation that never comes.
    await driver.page.dispatchEvent('#form', 'click');

    await expectViolations('form-action: https://example.org/form');
  });

  it.each(['leave', 'link'])('does not leave its page by %s', async (id) => {
    await launch();
    const before = driver.page.url();

    await driver.page.click(`#${id}`);

    await expect
      .poll(() => driver.takeForeignRequests())
      .toEqual([{ url: `https://example.org/${id}`, stoppedBy: 'navigation guard' }]);
    expect(driver.page.url()).toBe(before);
    expect(await driver.page.locator('#eval').isVisible()).toBe(true);
  });

  it('opens no window', async () => {
    await launch();

    await attempt('open');

    await expect
      .poll(() => driver.takeForeignRequests())
      .toEqual([{ url: 'https://example.org/open', stoppedBy: 'window guard' }]);
    expect(driver.pages()).toHaveLength(1);
  });

  it('downloads nothing', async () => {
    await launch();

    await attempt('download');

    await expect.poll(() => driver.takeForeignRequests()).toMatchObject([{ stoppedBy: 'download guard' }]);
  });

  it('still runs module workers of its own', async () => {
    await launch();

    expect(await attempt('worker')).toBe('sum 3');
    expect(driver.requests()).toContain('app://tonne/sum.js');
  });
});
