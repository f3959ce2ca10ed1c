import type { Driver, LaunchOptions } from '../driver.ts';
import { launchChromium } from './chromium.ts';
import { borrowProcess } from './process-traces.ts';
import { StandInRun } from './stand-in-run.ts';

/** Starts the built program on the stand-in for Electron and waits for its first page. */
export async function launchStandIn(options: LaunchOptions): Promise<Driver> {
  const browser = options.browser ?? (await launchChromium());
  const context = await browser.newContext({ viewport: { width: 1280, height: 860 } });
  const returnProcess = borrowProcess(options.words ?? []);
  const end = async (): Promise<void> => {
    returnProcess();
    await context.close();
    if (options.browser === undefined) await browser.close();
  };
  try {
    context.setDefaultTimeout(3000);
    const run = new StandInRun(context, options.systemLocale ?? 'en-GB', end);
    await run.start(options.distFolder);
    return run;
  } catch (failure) {
    await end();
    throw failure;
  }
}
