import type { MenuItemConstructorOptions } from 'electron';
import { basename } from 'node:path';
import type { Command } from './host.ts';
import type { RecentFile } from './shell/recent-files.ts';

type Item = MenuItemConstructorOptions & { readonly id: string };

/** What the menu does. A window is the one it was used in; a Mac may have none. */
export interface MenuDeeds {
  send(command: Command, windowId: number | undefined): void;
  openRecent(path: string, windowId: number | undefined): void;
  clearRecent(): void;
  zoom(to: 'in' | 'out' | 'whole'): void;
  showDataFolder(): void;
}

const separator: MenuItemConstructorOptions = { type: 'separator' };

function roleItem(role: NonNullable<MenuItemConstructorOptions['role']>): Item {
  return { id: role, role };
}

/** A single "&" marks a letter for the keyboard. */
function plainLabel(text: string): string {
  return text.replaceAll('&', '&&');
}

function recentItems(recent: readonly RecentFile[], deeds: MenuDeeds): Item[] {
  const names = recent.map(({ path }) => basename(path));
  const files = recent.map(({ path, isThere }, place): Item => {
    const name = names[place] ?? path;
    // The folder tells apart what has the same name.
    const label = names.filter((other) => other === name).length > 1 ? path : name;
    return {
      id: `recent-${String(place + 1)}`,
      label: plainLabel(isThere ? label : `${label} (not found)`),
      enabled: isThere,
      click: (_item, window) => deeds.openRecent(path, window?.id),
    };
  });
  const clear: Item = {
    id: 'clear-recent',
    label: '&Clear this list',
    enabled: recent.length > 0,
    click: () => deeds.clearRecent(),
  };
  return files.length === 0 ? [clear] : [...files, separator as Item, clear];
}

// The keys beside "+" and on the number pad do the same; most layouts have the sign on a shifted key.
function zoomItems(deeds: MenuDeeds): Item[] {
  const item = (id: string, label: string, accelerator: string, to: 'in' | 'out' | 'whole', visible = true): Item => ({
    id,
    label,
    accelerator,
    visible,
    acceleratorWorksWhenHidden: true,
    click: () => deeds.zoom(to),
  });
  return [
    item('zoom-in', 'Zoom &in', 'CmdOrCtrl+Plus', 'in'),
    item('zoom-in-equals', 'Zoom in', 'CmdOrCtrl+=', 'in', false),
    item('zoom-in-pad', 'Zoom in', 'CmdOrCtrl+numadd', 'in', false),
    item('zoom-out', 'Zoom &out', 'CmdOrCtrl+-', 'out'),
    item('zoom-out-pad', 'Zoom out', 'CmdOrCtrl+numsub', 'out', false),
    item('zoom-whole', '&Actual size', 'CmdOrCtrl+0', 'whole'),
  ];
}

/**
 * The menu. Each item has an id that tests click by. Undo and redo go to the screen, because the edit that they take back is a
 * change of the case, not of the letters in one field.
 */
export function menuTemplate(
  platform: NodeJS.Platform,
  deeds: MenuDeeds,
  recent: readonly RecentFile[],
): MenuItemConstructorOptions[] {
  const isMac = platform === 'darwin';
  const commandItem = (id: Command, label: string, accelerator?: string): Item => ({
    id,
    label,
    ...(accelerator === undefined ? {} : { accelerator }),
    click: (_item, window) => deeds.send(id, window?.id),
  });
  const file: MenuItemConstructorOptions[] = [
    commandItem('new-case', '&New case', 'CmdOrCtrl+N'),
    commandItem('open', '&Open…', 'CmdOrCtrl+O'),
    { id: 'recent', label: 'Open &recent', submenu: recentItems(recent, deeds) },
    commandItem('demonstration', 'Open the &demonstration'),
    separator,
    commandItem('save', '&Save', 'CmdOrCtrl+S'),
    commandItem('save-as', 'Save &As…', 'CmdOrCtrl+Shift+S'),
    commandItem('save-workbook', 'Save a &workbook…'),
    separator,
    commandItem('print', '&Print…', 'CmdOrCtrl+P'),
  ];
  const edit: MenuItemConstructorOptions[] = [
    commandItem('undo', '&Undo', 'CmdOrCtrl+Z'),
    commandItem('redo', '&Redo', isMac ? 'Cmd+Shift+Z' : 'Ctrl+Y'),
    separator,
    roleItem('cut'),
    roleItem('copy'),
    roleItem('paste'),
    roleItem('selectAll'),
    separator,
    commandItem('preferences', 'Pre&ferences…', 'CmdOrCtrl+,'),
  ];
  const view: MenuItemConstructorOptions[] = [...zoomItems(deeds), separator, roleItem('togglefullscreen')];
  const help: MenuItemConstructorOptions[] = [
    { id: 'data-folder', label: 'Show the folder of &log and drafts', click: () => deeds.showDataFolder() },
    separator,
    commandItem('about', '&About Tonne for Tonne'),
  ];
  return [
    // On a Mac the program's own menu comes first and holds Quit.
    ...(isMac ? [{ role: 'appMenu' } as const] : []),
    { id: 'file', label: '&File', submenu: isMac ? file : [...file, separator, roleItem('quit')] },
    { id: 'edit', label: '&Edit', submenu: edit },
    { id: 'view', label: '&View', submenu: view },
    { id: 'help', label: '&Help', submenu: help },
  ];
}
