// Measures the engine's speed: test/bench/main.ts in one bundle, run by Node as the terminal program is.
import { bundles } from './bundles.mjs';
import { ensureInstalled } from './lib/ensure-installed.mjs';
import { runChild } from './lib/run-child.mjs';
import { tellFailures } from './lib/tell-failures.mjs';
import { refreshBundle, resultOf } from './make-bundle.mjs';

await tellFailures(async () => {
  await ensureInstalled();
  await refreshBundle(bundles.bench);
  const { code } = await runChild(process.execPath, [resultOf(bundles.bench), ...process.argv.slice(2)], {
    shows: true,
  });
  return code;
});
