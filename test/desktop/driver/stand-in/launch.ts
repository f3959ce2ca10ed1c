import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Driver, LaunchOptions } from '../driver.ts';
import { launchChromium } from './chromium.ts';
import { borrowProcess } from './process-traces.ts';
import { StandInRun } from './stand-in-run.ts';

/** Starts the built program on the stand-in for Electron and waits for its first page. */
export async function launchStandIn(options: LaunchOptions): Promise<Driver> {
  const browser = options.browser ?? (await launchChromium());
  const context = await browser.newContext({ viewport: { width: 1280, height: 860 } });
  const ownData = options.dataFolder === undefined ? await mkdtemp(join(tmpdir(), 'data-')) : null;
  const returnProcess = borrowProcess(options.words ?? []);
  const end = async (): Promise<void> => {
    returnProcess();
    await context.close();
    // The program may still be writing where its window stood.
    if (ownData !== null) await rm(ownData, { recursive: true, force: true, maxRetries: 10, retryDelay: 50 });
    if (options.browser === undefined) await browser.close();
  };
  try {
    context.setDefaultTimeout(3000);
    const run = new StandInRun(context, { ...options, dataFolder: ownData ?? options.dataFolder ?? '' }, end);
    await run.start(options.distFolder);
    return run;
  } catch (failure) {
    await end();
    throw failure;
  }
}
