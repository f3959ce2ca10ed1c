// The terminal program from the sources: builds it when they are newer, then runs it and passes its exit code on.
import { bundles } from './bundles.mjs';
import { ensureInstalled } from './lib/ensure-installed.mjs';
import { runChild } from './lib/run-child.mjs';
import { tellFailures } from './lib/tell-failures.mjs';
import { refreshBundle, resultOf } from './make-bundle.mjs';

await tellFailures(async () => {
  await ensureInstalled();
  await refreshBundle(bundles.cli);
  const { code } = await runChild(process.execPath, [resultOf(bundles.cli), ...process.argv.slice(2)], { shows: true });
  return code;
});
