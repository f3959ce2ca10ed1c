import type { App, Session, WebContents } from 'electron';
import { isOwnAddress } from './own-address.ts';

const requestsAllowed = new Set(['devtools:', 'data:', 'blob:']);

/** Whether a request may leave a page: the program's own files and what the page made itself. */
export function mayRequest(address: string): boolean {
  return isOwnAddress(address) || (URL.canParse(address) && requestsAllowed.has(new URL(address).protocol));
}

function stayHome(event: { readonly url: string; preventDefault(): void }): void {
  if (!isOwnAddress(event.url)) event.preventDefault();
}

function sealContents(contents: WebContents): void {
  contents.on('will-navigate', stayHome);
  contents.on('will-frame-navigate', stayHome);
  contents.on('will-redirect', stayHome);
  contents.on('will-attach-webview', (event) => event.preventDefault());
  contents.setWindowOpenHandler(() => ({ action: 'deny' }));
  // Peer connections are no requests, so the request filter does not see them; without a proxy this leaves them no way out.
  contents.setWebRTCIPHandlingPolicy('disable_non_proxied_udp');
}

/** Before the program is ready: every process of a page runs in the sandbox of the system, and every page stays where it is. */
export function sealProgram(app: App): void {
  app.enableSandbox();
  app.on('web-contents-created', (_event, contents) => sealContents(contents));
}

/**
 * Once the session exists: nothing is granted, fetched or downloaded. The spelling checker is off because it downloads its
 * dictionaries. Crash reports stay unsent because the crash reporter is never started.
 */
export function sealSession(session: Session): void {
  session.setPermissionRequestHandler((_contents, _permission, answer) => answer(false));
  session.setPermissionCheckHandler(() => false);
  session.setDevicePermissionHandler(() => false);
  session.setSpellCheckerEnabled(false);
  session.on('will-download', (event) => event.preventDefault());
  session.webRequest.onBeforeRequest((details, answer) => answer({ cancel: !mayRequest(details.url) }));
}
