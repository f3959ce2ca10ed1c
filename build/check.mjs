// The one command before a commit: format, lint, types, layers, unused code and every test. All steps run, even after one has failed.
// --fast leaves the tests out.
import { checkSteps } from './check-steps.mjs';
import { ensureInstalled } from './lib/ensure-installed.mjs';
import { runChild } from './lib/run-child.mjs';
import { tellFailures } from './lib/tell-failures.mjs';

const isFast = process.argv.includes('--fast');

await tellFailures(async () => {
  await ensureInstalled();
  /** @type {string[]} */
  const failed = [];
  const waiting = [...checkSteps];
  // Two at a time keeps a small machine busy without making the steps wait for memory.
  await Promise.all([work(), work()]);
  if (!isFast) await runStep({ name: 'tests', script: 'build/test.mjs', args: [] }, true);
  console.log(failed.length === 0 ? '\nAll is well.' : `\nFailed: ${failed.join(', ')}.`);
  return failed.length === 0 ? 0 : 1;

  async function work() {
    for (let step = waiting.shift(); step !== undefined; step = waiting.shift()) await runStep(step, false);
  }

  /** @param {import('./check-steps.mjs').Step} step @param {boolean} shows */
  async function runStep({ name, script, args }, shows) {
    const start = performance.now();
    const { code, output } = await runChild(process.execPath, [script, ...args], { shows });
    const seconds = ((performance.now() - start) / 1000).toFixed(1).padStart(5);
    console.log(`${code === 0 ? 'ok    ' : 'FAILED'} ${seconds} s  ${name}`);
    if (code === 0) return;
    failed.push(name);
    if (output.trim() !== '') console.log(output.trim().replaceAll(/^/gm, '    '));
  }
});
