import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { serve } from '../../build/serve.mjs';
import type { Host } from '../../electron/host.ts';
import { launchChromium } from './driver/stand-in/chromium.ts';

declare global {
  interface Window {
    /** The host that the page of this test chose. */
    chosenHost: Host;
  }
}

let browser: Browser;
let folder: string;
let server: Awaited<ReturnType<typeof serve>>;

// The host alone, bundled, on the server that serves the program to a browser.
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'browser-host-'));
  await writeFile(join(folder, 'index.html'), '<!doctype html><script type="module" src="host.js"></script>');
  const entry = join(import.meta.dirname, '../../renderer/host/host.ts');
  await build({
    configFile: false,
    logLevel: 'warn',
    build: { outDir: folder, emptyOutDir: false, lib: { entry, formats: ['es'], fileName: () => 'bundle.js' } },
  });
  await writeFile(
    join(folder, 'host.js'),
    `import { chooseHost } from './bundle.js';
     window.chosenHost = chooseHost();
     window.chosenHost.onCommand((command) => { document.title = command; });`,
  );
  server = await serve(folder);
  browser = await launchChromium();
});
afterAll(async () => {
  await browser.close();
  await server.close();
  await rm(folder, { recursive: true });
});

/** A browser without file pickers, as some are. */
async function openPage(): Promise<Page> {
  const page = await browser.newPage({ locale: 'fi-FI' });
  page.setDefaultTimeout(3000);
  await page.addInitScript(() => {
    for (const name of ['showOpenFilePicker', 'showSaveFilePicker']) {
      Reflect.deleteProperty(window, name);
      Reflect.deleteProperty(Window.prototype, name);
    }
  });
  await page.goto(server.address);
  await page.waitForFunction(() => 'chosenHost' in window);
  return page;
}

describe('the host in a browser without file pickers', () => {
  it('knows what it is and whose numbers the person reads', async () => {
    const page = await openPage();

    expect(await page.evaluate(() => window.chosenHost.kind)).toBe('browser');
    expect(await page.evaluate(() => window.chosenHost.numberLocale())).toBe('fi-FI');
    expect(await page.evaluate(() => window.chosenHost.startingCase())).toBeNull();
  });

  it('opens a file through the file field', async () => {
    const page = await openPage();
    const chooser = page.waitForEvent('filechooser');
    const outcome = page.evaluate(() => window.chosenHost.openCase());

    await (await chooser).setFiles({ name: 'mill.tonne', mimeType: '', buffer: Buffer.from('{"name":"Übung"}') });

    expect(await outcome).toEqual({ kind: 'read', name: 'mill.tonne', text: '{"name":"Übung"}' });
  });

  it.each([
    ['saveCase', 'Mill.tonne', 'text'],
    ['saveCaseAs', 'Mill.tonne', 'text'],
    ['saveWorkbook', 'Mill.xlsx', 'PK'],
  ] as const)('offers %s as a download', async (verb, name, content) => {
    const page = await openPage();
    const download = page.waitForEvent('download');

    const outcome = await page.evaluate((given) => {
      const host = window.chosenHost;
      return given === 'saveWorkbook'
        ? host.saveWorkbook(new TextEncoder().encode('PK'), 'Mill')
        : host[given]('text', 'Mill');
    }, verb);

    expect(outcome).toEqual({ kind: 'saved', name });
    expect((await download).suggestedFilename()).toBe(name);
    expect(await readFile(await (await download).path(), 'utf8')).toBe(content);
  });

  it('takes the keys of the menu for its commands', async () => {
    const page = await openPage();

    await page.keyboard.press('Control+Shift+S');

    expect(await page.title()).toBe('save-as');
  });

  it('shows unsaved edits in the title and asks before they are lost', async () => {
    const page = await openPage();
    await page.evaluate(() => window.chosenHost.setEdited(true, 'Mill'));
    // A browser asks only on a page that was used.
    await page.mouse.click(5, 5);
    const asked = page.waitForEvent('dialog');

    await page.evaluate(() => setTimeout(() => location.reload(), 0));

    expect((await asked).type()).toBe('beforeunload');
    await (await asked).dismiss();
    expect(await page.title()).toBe('Mill (edited) - Tonne for Tonne');
  });
});

describe('unsaved work in a browser', () => {
  const keep = (page: Page, text: string | null) =>
    page.evaluate((given) => window.chosenHost.keepDraft(given, 'Mill'), text);
  const left = (page: Page) => page.evaluate(() => window.chosenHost.leftDrafts());

  it('outlives its tab, is offered by the next one and never by one beside it', async () => {
    const context = await browser.newContext();
    const open = async (): Promise<Page> => {
      const page = await context.newPage();
      await page.goto(server.address);
      await page.waitForFunction(() => 'chosenHost' in window);
      return page;
    };
    const first = await open();
    expect(await keep(first, 'work')).toEqual({ kind: 'kept' });
    const beside = await open();
    expect(await left(beside)).toEqual([]);
    await first.close();

    const next = await open();
    await expect.poll(() => left(next)).toMatchObject([{ title: 'Mill', text: 'work', file: 'none', name: null }]);
    const [draft] = await left(next);
    const take = (id: string) => next.evaluate((given) => window.chosenHost.takeDraft(given), id);
    expect(await take(draft?.id ?? '')).toEqual({ kind: 'taken', name: null });
    await expect.poll(() => left(beside)).toEqual([]);

    await keep(next, null);
    await next.close();
    expect(await left(beside)).toEqual([]);
    await context.close();
  });

  it('that the browser has no more room for is said so', async () => {
    const page = await openPage();

    const outcome = await keep(page, 'x'.repeat(20_000_000));

    expect(outcome).toMatchObject({
      kind: 'failed',
      sentence: expect.stringContaining('gives no more room') as string,
    });
  });
});

it('keeps preferences from one visit to the next, and passes over damaged ones', async () => {
  const page = await openPage();
  const wanted = { numberLocale: 'de-AT', theme: 'dark', currencyText: 'code', zoom: 100 } as const;

  await page.evaluate((given) => window.chosenHost.setPreferences(given), wanted);
  await page.reload();
  await page.waitForFunction(() => 'chosenHost' in window);
  expect(await page.evaluate(() => window.chosenHost.preferences())).toEqual(wanted);

  await page.evaluate(() => localStorage.setItem('tonne.preferences', '{"theme": "pi'));
  expect(await page.evaluate(() => window.chosenHost.preferences())).toMatchObject({ theme: 'system' });
});

it('finds the file pickers of a browser that has them', async () => {
  const page = await browser.newPage();
  await page.addInitScript(() => {
    // A file of the browser's own store stands for one of the disk: the handle and its writing are the real ones.
    const place = async () => (await navigator.storage.getDirectory()).getFileHandle('mill.tonne', { create: true });
    Object.assign(window, { showSaveFilePicker: place, showOpenFilePicker: async () => [await place()] });
  });
  await page.goto(server.address);
  await page.waitForFunction(() => 'chosenHost' in window);

  const saved = await page.evaluate(() => window.chosenHost.saveCase('{"name":"Übung"}', 'Mill'));
  const read = await page.evaluate(() => window.chosenHost.openCase());

  expect(saved).toEqual({ kind: 'saved', name: 'mill.tonne' });
  expect(read).toEqual({ kind: 'read', name: 'mill.tonne', text: '{"name":"Übung"}' });
});
