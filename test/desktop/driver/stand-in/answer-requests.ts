import type { Request, Route } from 'playwright-core';
import { toProgram } from './address.ts';
import type { Ledger } from './ledger.ts';
import { isPrevented } from './preventable.ts';
import type { StandInProtocols } from './protocols.ts';
import type { StandInSession } from './session.ts';
import type { StandInWindow } from './window.ts';

/** What decides about requests, in the order in which Electron asks. */
export interface Gates {
  readonly ledger: Ledger;
  readonly session: StandInSession;
  readonly protocols: StandInProtocols;
  readonly opened: readonly StandInWindow[];
}

/** A page that is being opened has no frame to ask for yet, and then belongs to no window. */
function windowOf(request: Request, opened: readonly StandInWindow[]): StandInWindow | undefined {
  try {
    const page = request.frame().page();
    return opened.find((window) => window.page === page);
  } catch {
    return undefined;
  }
}

/** Whether the listeners of a window let a navigation happen, as Electron asks them. */
function mayNavigate(window: StandInWindow, request: Request, url: string): boolean {
  const isMainFrame = request.frame().parentFrame() === null;
  if (isMainFrame && window.takeProgramLoad()) return true;
  const details = { url, isMainFrame, isSameDocument: false };
  const isHeld = isPrevented(window.webContents, 'will-frame-navigate', details);
  return !(isMainFrame && isPrevented(window.webContents, 'will-navigate', details)) && !isHeld;
}

/** Answers one request of a page with what the program's own handler says, and lets none out to the network. */
export async function answerRequest(route: Route, gates: Gates): Promise<void> {
  const request = route.request();
  const url = toProgram(request.url());
  const window = windowOf(request, gates.opened);
  gates.ledger.requests.push(url);

  if (window === undefined) {
    // A window that the page tries to open asks for its first address before it belongs to anything.
    const isDenied = gates.opened[0]?.webContents.mayOpen(url) === false;
    gates.ledger.addForeignRequest({ url, stoppedBy: isDenied ? 'window guard' : 'driver' });
    return route.abort('aborted');
  }
  if (request.isNavigationRequest() && !mayNavigate(window, request, url)) {
    gates.ledger.addForeignRequest({ url, stoppedBy: 'navigation guard' });
    // "Aborted" leaves the page standing, as a prevented navigation does.
    return route.abort('aborted');
  }
  if (await gates.session.isCancelled(url)) {
    gates.ledger.addForeignRequest({ url, stoppedBy: 'request filter' });
    return route.abort('blockedbyclient');
  }
  const response = await gates.protocols.answer(url, request.method());
  if (response === null) {
    gates.ledger.addForeignRequest({ url, stoppedBy: 'driver' });
    return route.abort('blockedbyclient');
  }
  const body = Buffer.from(await response.arrayBuffer());
  return route.fulfill({ status: response.status, headers: Object.fromEntries(response.headers), body });
}
