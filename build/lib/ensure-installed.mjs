import { existsSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { projectRoot } from './project-root.mjs';
import { runChild } from './run-child.mjs';
import { SentenceError } from './sentence-error.mjs';

/** Installs the packages of the lock file when they are missing or out of date; says so in one line, and is silent otherwise. */
export async function ensureInstalled() {
  if (isOlderThan20Point19(process.versions.node)) {
    throw new SentenceError(`Node.js 20.19 or newer is needed; this is ${process.versions.node}.`);
  }
  if (isInstalled(projectRoot)) return;
  console.error('Installing packages (once, about a minute)…');
  const { code, output } = await runChild('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error']);
  if (code === 0) return;
  const lastWords = output.trim().split('\n').slice(-12).join('\n');
  if (code === 127) throw new SentenceError('npm was not found: it comes with Node.js, please install that.');
  if (/ENOTFOUND|EAI_AGAIN|ECONNREFUSED|ECONNRESET|ETIMEDOUT|ENETUNREACH/.test(output)) {
    throw new SentenceError(
      'The packages could not be fetched: there is no way to the npm registry. Connect once, then try again.',
    );
  }
  throw new SentenceError(`The packages could not be installed. npm said:\n${lastWords}`);
}

/** @param {string} version */
function isOlderThan20Point19(version) {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  return major < 20 || (major === 20 && minor < 19);
}

/**
 * Trusts the times of the files first; a lock file that is merely newer (a fresh checkout) is compared with what is installed.
 * @param {string} root
 * @returns {boolean}
 */
export function isInstalled(root) {
  const installedList = join(root, 'node_modules/.package-lock.json');
  const lockFile = join(root, 'package-lock.json');
  if (!existsSync(installedList)) return false;
  if (!existsSync(lockFile) || statSync(installedList).mtimeMs >= statSync(lockFile).mtimeMs) return true;
  const installed = packagesOf(installedList);
  return Object.entries(packagesOf(lockFile)).every(([path, { version, optional }]) => {
    const match = installed[path];
    // The first entry is the project itself; optional packages are for other machines.
    return path === '' || (match === undefined ? optional === true : match.version === version);
  });
}

/** @param {string} path @returns {Record<string, { version?: string, optional?: boolean }>} */
function packagesOf(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8')).packages ?? {};
  } catch {
    return {};
  }
}
