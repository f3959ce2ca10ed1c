import type { MenuItemConstructorOptions } from 'electron';
import { describe, expect, it } from 'vitest';
import { menuTemplate } from '../../electron/menu.ts';

function items(platform: NodeJS.Platform, send = (_command: string, _windowId: number | undefined): void => undefined) {
  return menuTemplate(platform, send).flatMap((top) => (Array.isArray(top.submenu) ? top.submenu : [top]));
}
const named = (all: MenuItemConstructorOptions[]) => all.filter((item) => item.type !== 'separator');

describe('the menu', () => {
  it.each(['linux', 'win32', 'darwin'] as const)(
    'gives every item on %s an id or a role, and every key once',
    (platform) => {
      const all = named(items(platform));

      expect(all.filter((item) => item.id === undefined && item.role === undefined)).toEqual([]);
      const ids = all.map((item) => item.id ?? item.role);
      expect(new Set(ids).size).toBe(ids.length);
      const keys = all.flatMap((item) => item.accelerator ?? []);
      expect(new Set(keys).size).toBe(keys.length);
    },
  );

  it.each(['new-case', 'open', 'save', 'save-as', 'demonstration', 'undo', 'redo'])(
    'sends %s to the window it is used in',
    (command) => {
      const sent: unknown[] = [];
      const item = items('linux', (...given) => sent.push(given)).find(({ id }) => id === command);

      const click = item?.click as ((item: object, window: object, event: object) => void) | undefined;
      click?.({}, { id: 3 }, {});

      expect(sent).toEqual([[command, 3]]);
    },
  );

  it('holds Quit in the File menu, except on a Mac, where it stands in the first', () => {
    expect(items('linux').some((item) => item.role === 'quit')).toBe(true);
    expect(items('darwin').some((item) => item.role === 'quit')).toBe(false);
    expect(menuTemplate('darwin', () => undefined)[0]).toEqual({ role: 'appMenu' });
  });
});
