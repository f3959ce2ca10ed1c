import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { Refusal } from './console.ts';

const browsers = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'msedge', 'chrome'];
const longestWait = 60_000;

/** Prints a page of HTML to PDF, tagged and with an outline, through the installed browser. It reaches no network: the page carries all it needs. */
export function printPdf(html: string): Uint8Array {
  const browser = findBrowser();
  if (browser === null)
    throw new Refusal([
      'A PDF is printed through an installed browser, and none was found: name one in the variable CHROMIUM, or write a file ending in .html.',
    ]);
  const folder = mkdtempSync(join(tmpdir(), 'tonne-report-'));
  try {
    const [page, result] = [join(folder, 'report.html'), join(folder, 'report.pdf')];
    writeFileSync(page, html);
    const { status } = spawnSync(browser, [...options(folder), `--print-to-pdf=${result}`, pathToFileURL(page).href], {
      stdio: 'ignore',
      timeout: longestWait,
    });
    if (status !== 0 || !existsSync(result))
      throw new Refusal([
        `The browser "${browser}" could not print the report; write a file ending in .html and print that.`,
      ]);
    return readFileSync(result);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function options(folder: string): readonly string[] {
  const quiet = [
    '--disable-gpu',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
    '--no-first-run',
  ];
  // The browser refuses to run its sandbox as root, as build machines are.
  const asRoot = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  const pdf = ['--no-pdf-header-footer', '--generate-pdf-document-outline'];
  return ['--headless', ...quiet, ...asRoot, ...pdf, `--user-data-dir=${join(folder, 'profile')}`];
}

function findBrowser(): string | null {
  const named = process.env['CHROMIUM'];
  if (named !== undefined && existsSync(named)) return named;
  const folders = (process.env['PATH'] ?? '').split(delimiter);
  const endings = process.platform === 'win32' ? ['.exe'] : [''];
  const places = browsers.flatMap((name) =>
    folders.flatMap((folder) => endings.map((ending) => join(folder, name + ending))),
  );
  const installed = [
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
  ];
  return [...places, ...installed].find((place) => existsSync(place)) ?? null;
}
