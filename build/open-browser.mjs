import { spawn } from 'node:child_process';
import { findProgram } from './lib/find-program.mjs';

/**
 * Asks the system to show an address in the person's browser.
 * @param {string} address
 * @returns {boolean} false where no way to a browser was found
 */
export function openBrowser(address) {
  const [program, args] = openerFor(address);
  if (program === undefined) return false;
  const child = spawn(program, args, { stdio: 'ignore', detached: true });
  // The address is printed in any case, so an opener that fails leaves the person with something to click.
  child.on('error', () => undefined);
  child.unref();
  return true;
}

/**
 * @param {string} address
 * @returns {[string | undefined, string[]]}
 */
function openerFor(address) {
  if (process.platform === 'darwin') return ['open', [address]];
  if (process.platform === 'win32') return ['cmd', ['/c', 'start', '', address]];
  return [findProgram(['xdg-open', 'chromium', 'chromium-browser', 'google-chrome', 'firefox']), [address]];
}
