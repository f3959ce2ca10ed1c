import { expect, it } from 'vitest';
import { windowOptions } from '../../electron/window-options.ts';

it('keeps every window apart from the machine', () => {
  // Exactly these: what loosens a page (webSecurity, allowRunningInsecureContent, experimentalFeatures, webviewTag) is never named.
  expect(windowOptions('/program/preload.cjs', null).webPreferences).toEqual({
    preload: '/program/preload.cjs',
    contextIsolation: true,
    sandbox: true,
    nodeIntegration: false,
    spellcheck: false,
  });
});

it('shows a window only when it is drawn, and never smaller than two routes need', () => {
  expect(windowOptions('', null)).toMatchObject({ show: false, minWidth: 800, minHeight: 560 });
});

it('opens a window where it last stood', () => {
  expect(windowOptions('', { x: 10, y: 20, width: 900, height: 700 })).toMatchObject({
    x: 10,
    y: 20,
    width: 900,
    height: 700,
  });
});
