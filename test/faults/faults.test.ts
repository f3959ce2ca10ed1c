import { expect, it } from 'vitest';
import { bundles } from '../../build/bundles.mjs';
import { runChild } from '../../build/lib/run-child.mjs';
import { refreshBundle, resultOf } from '../../build/make-bundle.mjs';

// The short form of `npm run faults`, which is described in README.md beside this file.
it('survives kills, bad drives and hostile files', async () => {
  await refreshBundle(bundles.faults);

  const { output } = await runChild(process.execPath, [
    resultOf(bundles.faults),
    ...['--kills', '4', '--hostile', '600', '--seed', '7'],
  ]);

  expect(JSON.parse(output)).toMatchObject({
    isSound: true,
    disks: { failures: [] },
    hostile: { files: 600, failures: [] },
    kills: { kills: 4, lostOlderThanOneSecond: 0, lostThoughSaved: 0, unreadable: 0, failures: [] },
  });
}, 60_000);
