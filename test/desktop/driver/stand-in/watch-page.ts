import type { Page } from 'playwright-core';
import { toProgram } from './address.ts';
import type { Ledger } from './ledger.ts';
import { isPrevented } from './preventable.ts';
import type { StandInSession } from './session.ts';
import type { StandInWebContents } from './web-contents.ts';

/** Passes what a page tries on its own to the guards that Electron would ask. */
export function watchPage(page: Page, contents: StandInWebContents, session: StandInSession, ledger: Ledger): void {
  page.on('pageerror', (error) => ledger.addFault(`The page threw: ${error.message}`));
  page.on('popup', (popup) => {
    if (contents.mayOpen(popup.url())) ledger.addFault('The program allowed a new window.');
    void popup.close();
  });
  page.on('download', (download) => {
    const isRefused = isPrevented(session, 'will-download');
    ledger.addForeignRequest({ url: toProgram(download.url()), stoppedBy: isRefused ? 'download guard' : 'driver' });
    void download.cancel();
  });
}
