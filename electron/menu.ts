import type { MenuItemConstructorOptions } from 'electron';
import type { Command } from './host.ts';

type Item = MenuItemConstructorOptions & { readonly id: string };
/** Sends to the window the menu was used in; a Mac may have none. */
type SendCommand = (command: Command, windowId: number | undefined) => void;

function commandItem(command: Command, label: string, accelerator: string | null, send: SendCommand): Item {
  return {
    id: command,
    label,
    ...(accelerator === null ? {} : { accelerator }),
    click: (_item, window) => send(command, window?.id),
  };
}

function roleItem(role: NonNullable<MenuItemConstructorOptions['role']>): Item {
  return { id: role, role };
}

/**
 * The menu. Each item has an id that tests click by. Undo and redo go to the screen, because the edit that they take back is a
 * change of the case, not of the letters in one field.
 */
export function menuTemplate(platform: NodeJS.Platform, send: SendCommand): MenuItemConstructorOptions[] {
  const isMac = platform === 'darwin';
  const separator: MenuItemConstructorOptions = { type: 'separator' };
  const file: MenuItemConstructorOptions[] = [
    commandItem('new-case', '&New case', 'CmdOrCtrl+N', send),
    commandItem('open', '&Open…', 'CmdOrCtrl+O', send),
    commandItem('demonstration', 'Open the &demonstration', null, send),
    separator,
    commandItem('save', '&Save', 'CmdOrCtrl+S', send),
    commandItem('save-as', 'Save &As…', 'CmdOrCtrl+Shift+S', send),
  ];
  const edit: MenuItemConstructorOptions[] = [
    commandItem('undo', '&Undo', 'CmdOrCtrl+Z', send),
    commandItem('redo', '&Redo', isMac ? 'Cmd+Shift+Z' : 'Ctrl+Y', send),
    separator,
    roleItem('cut'),
    roleItem('copy'),
    roleItem('paste'),
    roleItem('selectAll'),
  ];
  const view: MenuItemConstructorOptions[] = [
    roleItem('zoomIn'),
    roleItem('zoomOut'),
    roleItem('resetZoom'),
    separator,
    roleItem('togglefullscreen'),
  ];
  return [
    // On a Mac the program's own menu comes first and holds Quit.
    ...(isMac ? [{ role: 'appMenu' } as const] : []),
    { id: 'file', label: '&File', submenu: isMac ? file : [...file, separator, roleItem('quit')] },
    { id: 'edit', label: '&Edit', submenu: edit },
    { id: 'view', label: '&View', submenu: view },
  ];
}
