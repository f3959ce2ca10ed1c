// Opens the program from a fresh checkout: installs and builds what is missing, then shows the window, else a browser, else the terminal.
// --serve only serves the page and prints its address.
import { join } from 'node:path';
import { bundles } from './bundles.mjs';
import { electronRuntime, fetchElectronRuntime, runElectron } from './electron-runtime.mjs';
import { ensureInstalled } from './lib/ensure-installed.mjs';
import { isRoot } from './lib/is-root.mjs';
import { projectRoot } from './lib/project-root.mjs';
import { runChild } from './lib/run-child.mjs';
import { SentenceError } from './lib/sentence-error.mjs';
import { tellFailures } from './lib/tell-failures.mjs';
import { refreshBundle, resultOf } from './make-bundle.mjs';
import { openBrowser } from './open-browser.mjs';
import { serve } from './serve.mjs';

const args = process.argv.slice(2).filter((arg) => arg !== '--serve');
const servesOnly = process.argv.includes('--serve');
const hasDisplay =
  process.platform !== 'linux' || Boolean(process.env['DISPLAY']) || Boolean(process.env['WAYLAND_DISPLAY']);

await tellFailures(async () => {
  await ensureInstalled();
  if (servesOnly) return showInBrowser({ opens: false });
  if (!hasDisplay) return showInTerminal();
  return (await showInWindow()) ?? showInBrowser({ opens: true });
});

/** @returns {Promise<number | undefined>} the window's exit code, or nothing where no window could be opened */
async function showInWindow() {
  if (process.platform === 'linux' && isRoot) {
    console.log(
      'The window does not open for root, since its sandbox cannot work then; the browser shows the same page instead.',
    );
    return undefined;
  }
  const program = electronRuntime() ?? (await fetchElectronRuntime());
  if (program === undefined) {
    console.log('The window (Electron) could not be fetched; the browser shows the same page instead.');
    return undefined;
  }
  await refreshBundle(bundles.renderer);
  await refreshBundle(bundles.electron);
  const { opened, code } = await runElectron(program, args);
  if (opened) return code;
  console.log(`The window (Electron) ended at once with code ${code}; the browser shows the same page instead.`);
  return undefined;
}

/** @param {{ opens: boolean }} choice @returns {Promise<number>} when the person ends it */
async function showInBrowser({ opens }) {
  await refreshBundle(bundles.renderer);
  const server = await serve(join(projectRoot, 'dist/renderer'));
  console.log(`Tonne for Tonne is at ${server.address} (Ctrl+C ends it)`);
  if (opens && !openBrowser(server.address)) console.log('No browser was found: open that address in one.');
  await new Promise((ended) => {
    for (const signal of /** @type {const} */ (['SIGINT', 'SIGTERM', 'SIGHUP'])) process.once(signal, ended);
  });
  await server.close();
  return 0;
}

/** @returns {Promise<number>} */
async function showInTerminal() {
  await refreshBundle(bundles.cli);
  const terminal = [resultOf(bundles.cli), 'compare', 'examples/demonstration.tonne'];
  const { code } = await runChild(process.execPath, terminal, { shows: true });
  if (code !== 0) throw new SentenceError(`The comparison of the demonstration case failed with code ${code}.`);
  console.log('\nThis is the demonstration case in the terminal, because no display was found.');
  console.log('For the window: run "npm start" on a desktop (DISPLAY or WAYLAND_DISPLAY set).');
  console.log('For a browser: run "npm start -- --serve" and open the address it prints.');
  console.log('For more in the terminal: "npm run -s tonne -- --help".');
  return 0;
}
