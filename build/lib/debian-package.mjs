import { existsSync } from 'node:fs';
import { findProgram } from './find-program.mjs';
import { isRoot } from './is-root.mjs';
import { runChild } from './run-child.mjs';

const timeLimit = 10 * 60_000;

/** Whether packages of the system can be installed from here: root on Debian. */
export const canInstallDebianPackages =
  isRoot && existsSync('/etc/debian_version') && findProgram(['apt-get']) !== undefined;

/**
 * Installs a package of Debian.
 * @param {string} name
 * @returns {Promise<string | undefined>} what went wrong, or nothing
 */
export async function installDebianPackage(name) {
  console.log(`Installing ${name} (Debian package, a minute or two)…`);
  const env = { DEBIAN_FRONTEND: 'noninteractive' };
  // Where the lists cannot be fetched the package may still be on the machine, so only the second step decides.
  await runChild('apt-get', ['update', '-q'], { timeLimit, env });
  const { code, output } = await runChild('apt-get', ['install', '-y', '-q', '--no-install-recommends', name], {
    timeLimit,
    env,
  });
  return code === 0 ? undefined : (output.trim().split('\n').at(-1) ?? 'no reason given');
}
