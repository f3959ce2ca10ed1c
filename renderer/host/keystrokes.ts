import type { Command } from '../../electron/host.ts';

// The same keys as the desktop menu, because a page in a browser has no menu of its own.
const keys: Readonly<Record<string, Command>> = {
  o: 'open',
  s: 'save',
  'shift+s': 'save-as',
  z: 'undo',
  'shift+z': 'redo',
  y: 'redo',
  ',': 'preferences',
};

/** Control on Windows and Linux, Command on a Mac. */
export function commandOfKeystroke(event: KeyboardEvent): Command | null {
  if (event.altKey || event.ctrlKey === event.metaKey) return null;
  return keys[`${event.shiftKey ? 'shift+' : ''}${event.key.toLowerCase()}`] ?? null;
}

export function listenForKeystrokes(listener: (command: Command) => void): () => void {
  const onKeyDown = (event: KeyboardEvent): void => {
    const command = commandOfKeystroke(event);
    if (command === null) return;
    event.preventDefault();
    listener(command);
  };
  window.addEventListener('keydown', onKeyDown);
  return () => window.removeEventListener('keydown', onKeyDown);
}
