import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it, onTestFinished } from 'vitest';
import { launchChromium } from './driver/stand-in/chromium.ts';
import { launchStandIn } from './driver/stand-in/launch.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser.close());

/** Starts a program whose main process is written by the test, on top of what every program needs to show a page. */
async function launchProgram({ seal = '', main = '', page = '<p>Page</p>' }) {
  const distFolder = await mkdtemp(join(tmpdir(), 'driver-'));
  onTestFinished(() => rm(distFolder, { recursive: true }));
  await mkdir(join(distFolder, 'electron'));
  await writeFile(
    join(distFolder, 'electron', 'preload.cjs'),
    `require('electron').contextBridge.exposeInMainWorld('host', {});`,
  );
  await writeFile(
    join(distFolder, 'electron', 'main.cjs'),
    `const electron = require('electron');
     const { app, BrowserWindow, dialog, Menu, protocol, session } = electron;
     app.whenReady().then(() => {
       const html = { headers: { 'content-type': 'text/html' } };
       protocol.handle('app', () => new Response(${JSON.stringify(page)}, html));
       ${seal}
       const window = new BrowserWindow({ webPreferences: { preload: __dirname + '/preload.cjs' } });
       window.loadURL('app://tonne/index.html');
       ${main}
     });`,
  );
  return launchStandIn({ distFolder, browser });
}

const sealed = `
  const ours = session.defaultSession;
  ours.setPermissionRequestHandler(() => {});
  ours.setPermissionCheckHandler(() => false);
  ours.setDevicePermissionHandler(() => false);
  ours.setSpellCheckerEnabled(false);
  ours.on('will-download', (event) => event.preventDefault());
  ours.webRequest.onBeforeRequest((details, answer) => answer({ cancel: !details.url.startsWith('app:') }));`;

describe('the driver', () => {
  it('ends without complaint when all is well', async () => {
    const driver = await launchProgram({ seal: sealed });

    await expect(driver.close()).resolves.toBeUndefined();
  });

  it('fails a program that opens a window before its session is sealed', async () => {
    const driver = await launchProgram({});

    await expect(driver.close()).rejects.toThrow(
      /no permission request handler[^]*no permission check handler[^]*no device handler[^]*spelling checker is on[^]*no request filter[^]*downloads are allowed/,
    );
  });

  it('fails on a dialog that no test announced', async () => {
    const driver = await launchProgram({
      seal: sealed,
      main: `dialog.showMessageBox(window, { message: 'Surprise' });`,
    });

    await expect(driver.close()).rejects.toThrow(
      'An unexpected dialog was shown: {"kind":"message","message":"Surprise"',
    );
  });

  it('fails on an announced dialog that never came', async () => {
    const driver = await launchProgram({ seal: sealed });
    driver.nextDialog({ kind: 'save', path: null });

    await expect(driver.close()).rejects.toThrow('No dialog came for {"kind":"save","path":null}');
  });

  it('fails on a button that the dialog does not have', async () => {
    const driver = await launchProgram({
      seal: sealed,
      main: `app.on('second-instance', () => dialog.showMessageBox(window, { message: 'Sure?', buttons: ['Yes'] }));`,
    });
    driver.nextDialog({ kind: 'message', button: 'No' });
    driver.startAgain([], '/');

    await expect(driver.close()).rejects.toThrow('“Sure?” has no button “No”');
  });

  it('fails on a breakdown that the program reports', async () => {
    const driver = await launchProgram({ seal: sealed, main: `dialog.showErrorBox('Broken', 'Sorry.');` });

    await expect(driver.close()).rejects.toThrow('The program broke down: Broken. Sorry.');
  });

  it('fails on an error that the page leaves uncaught', async () => {
    const driver = await launchProgram({ seal: sealed, page: '<script>throw new Error("slip")</script>' });

    await expect(driver.close()).rejects.toThrow('The page threw: slip');
  });

  it('lets no request out and tells which gate stopped it', async () => {
    const page = '<img src="https://example.org/a.png"><p>Page</p>';
    const driver = await launchProgram({ seal: sealed, page });

    await expect(driver.close()).rejects.toThrow(
      'tried to reach https://example.org/a.png (stopped by: request filter)',
    );
  });

  it('stops itself what the program would let out', async () => {
    const page = '<img src="https://example.org/a.png"><p>Page</p>';
    const openSeal = `${sealed} ours.webRequest.onBeforeRequest((details, answer) => answer({}));`;
    const driver = await launchProgram({ seal: openSeal, page });

    await expect
      .poll(() => driver.takeForeignRequests())
      .toEqual([{ url: 'https://example.org/a.png', stoppedBy: 'driver' }]);
    await driver.close();
  });

  it('sees a page that leaves because nothing holds it', async () => {
    const driver = await launchProgram({
      seal: `${sealed} ours.webRequest.onBeforeRequest((details, answer) => answer({}));`,
    });

    await driver.page.evaluate(() => (location.href = 'https://example.org/')).catch(() => undefined);

    await expect
      .poll(() => driver.takeForeignRequests())
      .toEqual([{ url: 'https://example.org/', stoppedBy: 'driver' }]);
    await driver.close();
  });

  it('fails a program that lets a page open windows', async () => {
    const driver = await launchProgram({ seal: sealed });

    await driver.page.evaluate(() => void window.open('/index.html'));
    await expect.poll(() => driver.requests()).toHaveLength(2);

    await expect(driver.close()).rejects.toThrow('tried to reach app://tonne/index.html (stopped by: driver)');
  });

  it.each([
    ['electron.autoUpdater', 'electron.autoUpdater.checkForUpdates()'],
    ['shell.openExternal', 'electron.shell.openExternal("https://example.org/")'],
    ['app.setLoginItemSettings', 'app.setLoginItemSettings({})'],
    ['BrowserWindow.setKiosk', 'new BrowserWindow({}).setKiosk(true)'],
    ['webContents.openDevTools', 'new BrowserWindow({}).webContents.openDevTools()'],
  ])('names what the stand-in lacks: %s', async (name, use) => {
    const main = `try { ${use}; } catch (error) { dialog.showErrorBox('Caught', error.message); }`;
    const driver = await launchProgram({ seal: sealed, main });

    await expect(driver.close()).rejects.toThrow(`The stand-in for electron lacks ${name}.`);
  });

  it('knows no menu item that the program does not have', async () => {
    const driver = await launchProgram({ seal: sealed, main: `Menu.setApplicationMenu(Menu.buildFromTemplate([]));` });

    await expect(driver.clickMenu('save')).rejects.toThrow('The menu has no item “save”.');
    await driver.close();
  });
});
