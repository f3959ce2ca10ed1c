import { EventEmitter } from 'node:events';
import type { App, Session } from 'electron';
import { describe, expect, it } from 'vitest';
import { mayRequest, sealProgram, sealSession } from '../../electron/lockdown.ts';

class FakeContents extends EventEmitter {
  openHandler: () => { action: string } = () => ({ action: 'allow' });
  webRtcPolicy = 'default';
  setWindowOpenHandler = (handler: () => { action: string }) => (this.openHandler = handler);
  setWebRTCIPHandlingPolicy = (policy: string) => (this.webRtcPolicy = policy);
}

function sealedContents() {
  const app = Object.assign(new EventEmitter(), { sandboxed: false, enableSandbox: () => (app.sandboxed = true) });
  sealProgram(app as unknown as App);
  const contents = new FakeContents();
  app.emit('web-contents-created', {}, contents);
  return { app, contents };
}

/** Emits an event that can be prevented and says whether it was. */
function isPrevented(emitter: EventEmitter, name: string, details: object): boolean {
  let prevented = false;
  emitter.emit(name, { ...details, preventDefault: () => (prevented = true) });
  return prevented;
}

const foreign = [
  'https://example.org/',
  'http://app//tonne/',
  'file:///etc/passwd',
  'javascript:alert(1)',
  'app://tonne.example/index.html',
  'app://tonne@example.org/index.html',
  'ms-settings:privacy',
  'about:blank',
];

describe('the lockdown', () => {
  it('runs every page in the sandbox of the system', () => {
    expect(sealedContents().app.sandboxed).toBe(true);
  });

  it.each(['will-navigate', 'will-frame-navigate', 'will-redirect'])('keeps every page at home on %s', (name) => {
    const { contents } = sealedContents();

    for (const url of foreign)
      expect({ url, prevented: isPrevented(contents, name, { url }) }).toEqual({ url, prevented: true });
    expect(isPrevented(contents, name, { url: 'app://tonne/index.html' })).toBe(false);
  });

  it('opens no window, attaches no guest page and lets no peer connection out', () => {
    const { contents } = sealedContents();

    expect(contents.openHandler()).toEqual({ action: 'deny' });
    expect(isPrevented(contents, 'will-attach-webview', {})).toBe(true);
    expect(contents.webRtcPolicy).toBe('disable_non_proxied_udp');
  });

  it.each([
    ['app://tonne/index.html', true],
    ['data:image/png;base64,AA==', true],
    ['blob:app://tonne/0-0', true],
    ['devtools://devtools/bundled/a.js', true],
    ['app://elsewhere/index.html', false],
    ['https://example.org/', false],
    ['wss://example.org/', false],
    ['file:///etc/passwd', false],
    ['filesystem:app://tonne/a', false],
    ['', false],
  ])('lets a request for %j through: %s', (address, expected) => {
    expect(mayRequest(address)).toBe(expected);
  });

  it('grants nothing, checks no spelling, downloads nothing and cancels foreign requests', () => {
    const set: Record<string, unknown> = {};
    const remember = (name: string) => (value: unknown) => (set[name] = value);
    const session = Object.assign(new EventEmitter(), {
      setPermissionRequestHandler: remember('request'),
      setPermissionCheckHandler: remember('check'),
      setDevicePermissionHandler: remember('device'),
      setSpellCheckerEnabled: remember('spelling'),
      webRequest: { onBeforeRequest: remember('filter') },
    });
    sealSession(session as unknown as Session);

    const answers: unknown[] = [];
    const answer = (given: unknown): unknown => answers.push(given);
    (set['request'] as (...given: unknown[]) => void)({}, 'media', answer);
    (set['filter'] as (...given: unknown[]) => void)({ url: 'https://example.org/' }, answer);
    (set['filter'] as (...given: unknown[]) => void)({ url: 'app://tonne/a.js' }, answer);

    expect(answers).toEqual([false, { cancel: true }, { cancel: false }]);
    expect((set['check'] as () => boolean)()).toBe(false);
    expect((set['device'] as () => boolean)()).toBe(false);
    expect(set['spelling']).toBe(false);
    expect(isPrevented(session, 'will-download', {})).toBe(true);
  });
});
