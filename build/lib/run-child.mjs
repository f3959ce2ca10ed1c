import { spawn } from 'node:child_process';
import { projectRoot } from './project-root.mjs';

/**
 * Runs a program to its end. A program that cannot be started answers code 127, one that is stopped by the time limit 124.
 * @param {string} command
 * @param {readonly string[]} args
 * @param {{ shows?: boolean, timeLimit?: number, env?: Record<string, string> }} [options] `shows` passes its words on as they
 *   come; otherwise they are collected. `timeLimit` in milliseconds.
 * @returns {Promise<{ code: number, output: string }>}
 */
export function runChild(command, args, { shows = false, timeLimit, env = {} } = {}) {
  return new Promise((resolve) => {
    const child = spawn(command, args, {
      cwd: projectRoot,
      env: { ...process.env, ...env },
      stdio: shows ? 'inherit' : ['ignore', 'pipe', 'pipe'],
      // npm is a command file on Windows, which only a shell can start; no argument given here holds anything a shell would read.
      shell: process.platform === 'win32' && command === 'npm',
    });
    let output = '';
    let isLate = false;
    const timer = timeLimit === undefined ? undefined : setTimeout(stop, timeLimit);
    function stop() {
      isLate = true;
      child.kill('SIGKILL');
    }
    /** @param {number} code */
    const finish = (code) => {
      clearTimeout(timer);
      resolve({ code, output });
    };
    child.stdout?.on('data', (chunk) => (output += String(chunk)));
    child.stderr?.on('data', (chunk) => (output += String(chunk)));
    child.on('error', (error) => {
      output += error.message;
      finish(127);
    });
    child.on('close', (code, signal) => finish(isLate ? 124 : signal === null ? (code ?? 1) : 1));
  });
}
