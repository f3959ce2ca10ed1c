import { spawn } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { projectRoot } from './lib/project-root.mjs';
import { runChild } from './lib/run-child.mjs';

const packageFolder = join(projectRoot, 'node_modules/electron');
const fetchLimit = 180_000;

/**
 * The runtime's program, or nothing if it is not there. Looked up by its files, because asking the package for it starts a download.
 * @param {string} [folder] the package's folder
 * @returns {string | undefined}
 */
export function electronRuntime(folder = packageFolder) {
  const pathFile = join(folder, 'path.txt');
  if (!existsSync(pathFile)) return undefined;
  const program = join(folder, 'dist', readFileSync(pathFile, 'utf8').trim());
  return existsSync(program) ? program : undefined;
}

/** Fetches the runtime with the package's own installer; answers nothing where that fails. @returns {Promise<string | undefined>} */
export async function fetchElectronRuntime() {
  const installer = join(packageFolder, 'install.js');
  if (!existsSync(installer)) return undefined;
  console.log('Fetching the window (Electron, once, about 120 MB)…');
  await runChild(process.execPath, [installer], { timeLimit: fetchLimit });
  return electronRuntime();
}

/**
 * Opens the window and waits until it is closed.
 * @param {string} program
 * @param {readonly string[]} args
 * @returns {Promise<{ opened: boolean, code: number }>} `opened` is false where it ended at once with a failure
 */
export function runElectron(program, args) {
  const start = Date.now();
  // A terminal inside an Electron program hands this down, and then the runtime would behave like plain Node.
  const env = { ...process.env };
  delete env['ELECTRON_RUN_AS_NODE'];
  return new Promise((resolve) => {
    const child = spawn(program, [projectRoot, ...args], { stdio: 'inherit', env });
    child.on('error', () => resolve({ opened: false, code: 1 }));
    child.on('close', (code) => {
      resolve({ opened: code === 0 || Date.now() - start > 8000, code: code ?? 1 });
    });
  });
}
