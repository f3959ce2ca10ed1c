/** What the page is given to reach the stand-in; taken from it before its own code runs. */
interface BridgedWindow {
  standInInvoke?: (channel: string, payload: unknown[]) => Promise<unknown>;
  standInReport?: (violation: string) => Promise<void>;
}

type PreloadRun = (require: (name: string) => unknown) => void;
type Listener = (event: object, ...payload: unknown[]) => void;

/** Under this symbol the page keeps the function that delivers a message of main to the listeners of the preload. */
export const deliverKey = 'stand-in.deliver';

/**
 * Runs in the page before anything else: gives the preload an `electron` of its own. In Electron the preload lives in a world
 * apart; here it shares the page's, which is why the stand-in proves nothing about isolation. Its text is sent to the page, so
 * it may use nothing from outside itself.
 */
function bridge(origin: string, key: string, runPreload: PreloadRun): void {
  const page = window as Window & BridgedWindow;
  const { standInInvoke: invoke, standInReport: report } = page;
  if (window !== window.top || location.origin !== origin || invoke === undefined || report === undefined) return;
  delete page.standInInvoke;
  delete page.standInReport;

  window.addEventListener('securitypolicyviolation', (event) => {
    void report(`${event.effectiveDirective}: ${event.blockedURI}`);
  });

  const listeners = new Map<string, Set<Listener>>();
  const at = (channel: string): Set<Listener> => {
    const known = listeners.get(channel) ?? new Set();
    listeners.set(channel, known);
    return known;
  };
  const deliver = (channel: string, payload: unknown[]): void => {
    for (const listener of at(channel)) listener({}, ...payload);
  };
  Object.defineProperty(window, Symbol.for(key), { value: deliver });

  const complete = <Target extends object>(name: string, target: Target): Target =>
    new Proxy(target, {
      get(_target, property) {
        if (typeof property === 'string' && !(property in target)) {
          throw new Error(`The stand-in for electron lacks ${name}.${property} in the preload.`);
        }
        return Reflect.get(target, property) as unknown;
      },
    });
  const electron = complete('electron', {
    contextBridge: complete('contextBridge', {
      exposeInMainWorld: (name: string, value: object) => {
        Object.defineProperty(window, name, { value: Object.freeze(value), enumerable: true });
      },
    }),
    // A test writes the place of a file that it drops on the file itself; a browser has none to tell.
    webUtils: complete('webUtils', {
      getPathForFile: (file: File & { readonly standInPath?: string }) => file.standInPath ?? '',
    }),
    ipcRenderer: complete('ipcRenderer', {
      invoke: (channel: string, ...payload: unknown[]) => invoke(channel, payload),
      on: (channel: string, listener: Listener) => at(channel).add(listener),
      off: (channel: string, listener: Listener) => at(channel).delete(listener),
    }),
  });
  runPreload((name) => {
    if (name !== 'electron') throw new Error(`A sandboxed preload cannot require ${name}.`);
    return electron;
  });
}

/** The init script that runs the built preload in a page of this origin. */
export function bridgeScript(origin: string, preload: string): string {
  const runPreload = `(require) => { const module = { exports: {} }; const { exports } = module;\n${preload}\n}`;
  return `(${bridge.toString()})(${JSON.stringify(origin)}, ${JSON.stringify(deliverKey)}, ${runPreload});`;
}
