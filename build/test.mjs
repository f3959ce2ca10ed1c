// Runs every group of tests that this machine can run, says loudly which it could not, and ends with the sum of them all.
// Arguments go to vitest for the unit tests; a file or name among them means that only those are wanted.
import { mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { canInstallDebianPackages, installDebianPackage } from './lib/debian-package.mjs';
import { ensureInstalled } from './lib/ensure-installed.mjs';
import { filesUnder } from './lib/files-under.mjs';
import { findProgram } from './lib/find-program.mjs';
import { projectRoot } from './lib/project-root.mjs';
import { runChild } from './lib/run-child.mjs';
import { tellFailures } from './lib/tell-failures.mjs';
import { readCounts, tellCounts } from './lib/vitest-counts.mjs';
import { refreshBundle } from './make-bundle.mjs';
import { testGroups } from './test-groups.mjs';

/** @typedef {import('./test-groups.mjs').Group} Group */

const args = process.argv.slice(2);
const wantsSome = args.some((arg) => !arg.startsWith('-'));
const isOnServer = process.env['CI'] === 'true';
const vitest = join(projectRoot, 'node_modules/vitest/vitest.mjs');
const reports = join(projectRoot, 'dist/test');

await tellFailures(async () => {
  await ensureInstalled();
  mkdirSync(reports, { recursive: true });
  const total = { passed: 0, failed: 0, skipped: 0 };
  /** @type {string[]} */
  const notRun = [];
  let isSound = true;
  for (const group of testGroups.filter(hasTests)) {
    if (wantsSome && group.name !== 'unit') continue;
    const { env, missing } = await provide(group);
    if (missing !== undefined) {
      notRun.push(missing);
      continue;
    }
    const { code, counts } = await runGroup(group, env);
    isSound &&= code === 0;
    total.passed += counts.passed;
    total.failed += counts.failed;
    total.skipped += counts.skipped;
  }
  for (const sentence of notRun) console.log(`\nNOT RUN: ${sentence}`);
  if (wantsSome) console.log('\nOnly the unit tests you named were run.');
  console.log(`\n${tellCounts(total)}`);
  return isSound && total.failed === 0 && !(isOnServer && notRun.length > 0) ? 0 : 1;
});

/** @param {Group} group */
function hasTests({ folder }) {
  return filesUnder(projectRoot, folder).some((path) => path.endsWith('.test.ts'));
}

/**
 * Finds, or installs where that is possible, the program that a group needs.
 * @param {Group} group
 * @returns {Promise<{ env: Record<string, string>, missing?: string }>} `missing` is a sentence
 */
async function provide({ name, need }) {
  if (need === undefined) return { env: {} };
  const given = process.env[need.variable];
  let program = given !== undefined && given !== '' ? given : findProgram(need.programs);
  let reason = '';
  if (program === undefined && canInstallDebianPackages) {
    const failure = await installDebianPackage(need.debianPackage);
    program = findProgram(need.programs);
    if (failure !== undefined) reason = ` Installing it failed: ${failure}`;
  }
  if (program !== undefined) return { env: { [need.variable]: program } };
  const remedy = `on Debian "apt-get install ${need.debianPackage}", elsewhere install it and set ${need.variable} to its path`;
  return { env: {}, missing: `the ${name} tests, because ${need.title} is missing (${remedy}).${reason}` };
}

/**
 * @param {Group} group
 * @param {Record<string, string>} env
 */
async function runGroup({ name, bundles }, env) {
  for (const bundle of bundles) await refreshBundle(bundle);
  const report = join(reports, `${name}.json`);
  rmSync(report, { force: true });
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  const chosen = name === 'unit' ? args : [];
  console.log(`\n${name} tests`);
  const { code } = await runChild(process.execPath, [vitest, 'run', '--project', name, ...reporters, ...chosen], {
    shows: true,
    env,
  });
  const counts = readCounts(report);
  return { code, counts: counts ?? { passed: 0, failed: 1, skipped: 0 } };
}
