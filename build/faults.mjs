// Tries the faults that a program must survive: 200 kills at random moments, full and read-only drives, 100,000 hostile files. All
// of it runs from test/faults/main.ts in one bundle. --kills N, --hostile N and --seed N make it shorter or another.
import { bundles } from './bundles.mjs';
import { ensureInstalled } from './lib/ensure-installed.mjs';
import { runChild } from './lib/run-child.mjs';
import { tellFailures } from './lib/tell-failures.mjs';
import { refreshBundle, resultOf } from './make-bundle.mjs';

await tellFailures(async () => {
  await ensureInstalled();
  await refreshBundle(bundles.faults);
  const { code } = await runChild(process.execPath, [resultOf(bundles.faults), ...process.argv.slice(2)], {
    shows: true,
  });
  return code;
});
