import type { MenuItemConstructorOptions } from 'electron';

interface StandInMenu {
  readonly items: readonly MenuItemConstructorOptions[];
}

function findItem(items: readonly MenuItemConstructorOptions[], id: string): MenuItemConstructorOptions | undefined {
  for (const item of items) {
    if (item.id === id) return item;
    const inner = Array.isArray(item.submenu) ? findItem(item.submenu, id) : undefined;
    if (inner !== undefined) return inner;
  }
  return undefined;
}

/** Electron's `Menu`: keeps the template and lets items be clicked by id. */
export class StandInMenus {
  #items: readonly MenuItemConstructorOptions[] = [];

  /** The object that main imports. */
  readonly Menu = {
    buildFromTemplate: (items: readonly MenuItemConstructorOptions[]): StandInMenu => ({ items }),
    setApplicationMenu: (menu: StandInMenu) => (this.#items = menu.items),
  };

  look(id: string): { readonly label: string; readonly enabled: boolean } | null {
    const item = findItem(this.#items, id);
    return item === undefined ? null : { label: item.label ?? '', enabled: item.enabled ?? true };
  }

  /** Clicks an item of the program's own; of Electron's ready-made roles only Quit is known. */
  click(id: string, window: object | undefined, quit: () => void): void {
    const item = findItem(this.#items, id);
    if (item === undefined) throw new Error(`The menu has no item “${id}”.`);
    if (item.enabled === false) throw new Error(`The menu item “${id}” is greyed out.`);
    if (item.role === 'quit') {
      quit();
      return;
    }
    const click = item.click as ((item: object, window: object | undefined, event: object) => void) | undefined;
    if (click === undefined)
      throw new Error(`The stand-in cannot perform the menu item “${id}” (role ${String(item.role)}).`);
    click(item, window, {});
  }
}
