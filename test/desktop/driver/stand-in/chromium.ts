import { existsSync } from 'node:fs';
import { type Browser, chromium } from 'playwright-core';

const places = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
];

const quiet = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
  '--disable-quic',
];

/** The installed browser, at the path in CHROMIUM or where systems put it. */
export function launchChromium(): Promise<Browser> {
  const executablePath = [process.env['CHROMIUM'] ?? '', ...places].find((path) => path !== '' && existsSync(path));
  if (executablePath === undefined) {
    throw new Error('The desktop tests need Chromium: install it, or set CHROMIUM to its path.');
  }
  return chromium.launch({ executablePath, args: quiet });
}
