import { expect, it } from 'vitest';
import { commandOfKeystroke } from '../../../renderer/host/keystrokes.ts';

const released = { ctrlKey: false, metaKey: false, shiftKey: false, altKey: false };
const press = (key: string, held: Partial<typeof released>) =>
  commandOfKeystroke({ key, ...released, ...held } as KeyboardEvent);

it.each([
  ['o', { ctrlKey: true }, 'open'],
  ['s', { ctrlKey: true }, 'save'],
  ['S', { ctrlKey: true, shiftKey: true }, 'save-as'],
  ['z', { metaKey: true }, 'undo'],
  ['Z', { metaKey: true, shiftKey: true }, 'redo'],
  ['y', { ctrlKey: true }, 'redo'],
] as const)('takes %s with %j for %s', (key, held, command) => {
  expect(press(key, held)).toBe(command);
});

it.each([
  ['s', {}],
  ['s', { altKey: true, ctrlKey: true }],
  ['s', { ctrlKey: true, metaKey: true }],
  ['p', { ctrlKey: true }],
] as const)('leaves %s with %j to the browser', (key, held) => {
  expect(press(key, held)).toBeNull();
});
