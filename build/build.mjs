// Builds the program: the window's page, Electron's main process and preload, and the terminal program, all into dist/.
import { bundles } from './bundles.mjs';
import { ensureInstalled } from './lib/ensure-installed.mjs';
import { tellFailures } from './lib/tell-failures.mjs';
import { makeBundle } from './make-bundle.mjs';

await tellFailures(async () => {
  await ensureInstalled();
  for (const bundle of [bundles.cli, bundles.electron, bundles.renderer]) {
    const start = performance.now();
    await makeBundle(bundle);
    console.log(`dist/${bundle.name}  ${((performance.now() - start) / 1000).toFixed(1)} s`);
  }
  return 0;
});
