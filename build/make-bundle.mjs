import { existsSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { newestTime } from './lib/newest-time.mjs';
import { projectRoot } from './lib/project-root.mjs';
import { SentenceError } from './lib/sentence-error.mjs';

/** @typedef {import('./bundles.mjs').Bundle} Bundle */

/** @param {Bundle} bundle @returns {string} the file by which one sees that the bundle is there */
export const resultOf = ({ name, result }) => join(projectRoot, 'dist', name, result);

/**
 * Builds a bundle whose result is missing or older than any of its inputs.
 * @param {Bundle} bundle
 */
export async function refreshBundle(bundle) {
  const built = newestTime(resultOf(bundle));
  if (built > 0 && bundle.inputs.every((input) => newestTime(join(projectRoot, input)) <= built)) return;
  await makeBundle(bundle);
}

/**
 * Builds beside the old result and swaps at the end, so that a program which is started meanwhile never reads half a file.
 * @param {Bundle} bundle
 */
export async function makeBundle(bundle) {
  const { build } = await import('vite');
  const finalFolder = join(projectRoot, 'dist', bundle.name);
  const workFolder = `${finalFolder}.building-${process.pid}`;
  try {
    for (const config of await bundle.configs(workFolder)) await build(config);
    rmSync(finalFolder, { recursive: true, force: true });
    renameSync(workFolder, finalFolder);
  } catch (error) {
    // Another run that built at the same time may have put its equal result there first.
    if (existsSync(resultOf(bundle)) && error instanceof Error && 'code' in error && error.code === 'ENOTEMPTY') return;
    const reason = (error instanceof Error ? error.message : String(error)).split('Stack backtrace')[0]?.trim() ?? '';
    throw new SentenceError(`Building ${bundle.name} failed: ${reason}`);
  } finally {
    rmSync(workFolder, { recursive: true, force: true });
  }
}
