import type { MenuItemConstructorOptions } from 'electron';
import { describe, expect, it } from 'vitest';
import { type MenuDeeds, menuTemplate } from '../../electron/menu.ts';
import type { RecentFile } from '../../electron/shell/recent-files.ts';

/** Deeds that only note that they were asked for. */
function noted() {
  const done: unknown[] = [];
  const deeds: MenuDeeds = {
    send: (...given) => done.push(['send', ...given]),
    openRecent: (...given) => done.push(['open recent', ...given]),
    clearRecent: () => done.push(['clear recent']),
    zoom: (to) => done.push(['zoom', to]),
    showDataFolder: () => done.push(['show the data folder']),
  };
  return { deeds, done };
}

function flat(items: readonly MenuItemConstructorOptions[]): MenuItemConstructorOptions[] {
  return items.flatMap((item) => [item, ...(Array.isArray(item.submenu) ? flat(item.submenu) : [])]);
}
function menu(platform: NodeJS.Platform, recent: readonly RecentFile[] = []) {
  const { deeds, done } = noted();
  const all = flat(menuTemplate(platform, deeds, recent)).filter((item) => item.type !== 'separator');
  const item = (id: string) => all.find((candidate) => candidate.id === id);
  const click = (id: string) => {
    const deed = item(id)?.click as ((item: object, window: object, event: object) => void) | undefined;
    deed?.({}, { id: 3 }, {});
  };
  return { all, done, item, click };
}

describe('the menu', () => {
  it.each(['linux', 'win32', 'darwin'] as const)(
    'gives every item on %s an id or a role, and every key once',
    (platform) => {
      const { all } = menu(platform, [{ path: '/a.tonne', isThere: true }]);

      expect(all.filter((item) => item.id === undefined && item.role === undefined)).toEqual([]);
      const ids = all.map((item) => item.id ?? item.role);
      expect(new Set(ids).size).toBe(ids.length);
      const keys = all.flatMap((item) => item.accelerator ?? []);
      expect(new Set(keys).size).toBe(keys.length);
    },
  );

  it.each([
    'new-case',
    'open',
    'save',
    'save-as',
    'save-workbook',
    'demonstration',
    'undo',
    'redo',
    'print',
    'preferences',
    'about',
  ])('sends %s to the window it is used in', (command) => {
    const { click, done } = menu('linux');

    click(command);

    expect(done).toEqual([['send', command, 3]]);
  });

  it('holds Quit in the File menu, except on a Mac, where it stands in the first', () => {
    expect(menu('linux').all.some((item) => item.role === 'quit')).toBe(true);
    expect(menu('darwin').all.some((item) => item.role === 'quit')).toBe(false);
    expect(menu('darwin').all[0]).toEqual({ role: 'appMenu' });
  });

  it('zooms by the signs, by the key beside them and by the number pad', () => {
    const { click, done, item } = menu('linux');

    for (const id of ['zoom-in', 'zoom-in-equals', 'zoom-in-pad', 'zoom-out', 'zoom-out-pad', 'zoom-whole']) click(id);

    expect(done.map((deed) => (deed as string[])[1])).toEqual(['in', 'in', 'in', 'out', 'out', 'whole']);
    expect(item('zoom-in-pad')).toMatchObject({ visible: false, acceleratorWorksWhenHidden: true });
  });
});

describe('the list of recent files in the menu', () => {
  const recent = [
    { path: '/mills/north/plan.tonne', isThere: true },
    { path: '/mills/south/plan.tonne', isThere: false },
    { path: '/mills/board & news.tonne', isThere: true },
  ];

  it('opens a file in the window it is used in', () => {
    const { click, done } = menu('linux', recent);

    click('recent-3');

    expect(done).toEqual([['open recent', '/mills/board & news.tonne', 3]]);
  });

  it('greys a file that is not there and says so', () => {
    const { item } = menu('linux', recent);

    expect(item('recent-1')).toMatchObject({ enabled: true });
    expect(item('recent-2')).toMatchObject({ enabled: false, label: '/mills/south/plan.tonne (not found)' });
  });

  it('shows the folder only where two files have the same name, and an ampersand as it is', () => {
    const { item } = menu('linux', recent);

    expect(item('recent-1')?.label).toBe('/mills/north/plan.tonne');
    expect(item('recent-3')?.label).toBe('board && news.tonne');
  });

  it('can be cleared when there is something in it', () => {
    expect(menu('linux').item('clear-recent')).toMatchObject({ enabled: false });
    const { click, done, item } = menu('linux', recent);

    click('clear-recent');

    expect(item('clear-recent')).toMatchObject({ enabled: true });
    expect(done).toEqual([['clear recent']]);
  });
});
