import type { IpcMainInvokeEvent } from 'electron';
import { describe, expect, it } from 'vitest';
import { channelOf } from '../../electron/channels.ts';
import { payloads, registerChannels, type Verbs } from '../../electron/ipc.ts';

type Handler = (event: IpcMainInvokeEvent, ...payload: unknown[]) => Promise<unknown>;

const goodPayloads: { readonly [Name in keyof Verbs]: readonly unknown[] } = {
  numberLocale: [],
  startingCase: [],
  openCase: [],
  openGiven: [],
  openPath: ['/cases/mill.tonne'],
  reloadCase: [],
  saveCase: ['text', 'case'],
  saveCaseOver: ['text', 'case'],
  saveCaseAs: ['text', 'case'],
  saveWorkbook: [new Uint8Array([80, 75]), 'case'],
  setEdited: [true, 'case'],
  keepDraft: ['text', 'case'],
  leftDrafts: [],
  takeDraft: ['0123456789abcdef'],
  forgetDraft: ['0123456789abcdef'],
  preferences: [],
  setPreferences: [{ numberLocale: 'de-AT', theme: 'dark', currencyText: 'code', zoom: 125 }],
  versions: [],
};

/** Registers every channel over verbs that only note that they were reached. */
function registered() {
  const reached: string[] = [];
  const note = (name: string) => (): Promise<never> => {
    reached.push(name);
    return Promise.resolve(undefined as never);
  };
  const verbs = Object.fromEntries(Object.keys(payloads).map((name) => [name, note(name)])) as unknown as Verbs;
  const handlers = new Map<string, Handler>();
  registerChannels({ handle: (channel, handler: Handler) => handlers.set(channel, handler) }, (id) =>
    id === 7 ? verbs : undefined,
  );
  return { reached, handlers };
}

function from(url: string, { parent = null, contentsId = 7 }: { parent?: object | null; contentsId?: number } = {}) {
  return { sender: { id: contentsId }, senderFrame: { url, parent } } as unknown as IpcMainInvokeEvent;
}

const home = 'app://tonne/index.html';
const noFrame = { sender: { id: 7 }, senderFrame: null } as unknown as IpcMainInvokeEvent;
const strangers: readonly [string, IpcMainInvokeEvent][] = [
  ['a page of the web', from('https://example.org/index.html')],
  ['a host that begins alike', from('app://tonne.example/index.html')],
  ['our address as a user name', from('app://tonne@example.org/index.html')],
  ['a file of the disk', from('file:///index.html')],
  ['an empty page', from('about:blank')],
  ['an address that is none', from('')],
  ['a frame within our page', from(home, { parent: {} })],
  ['a frame that is gone', noFrame],
  ['a window the program did not open', from(home, { contentsId: 8 })],
];
const names = Object.keys(payloads) as (keyof Verbs)[];

describe('the channels to the machine', () => {
  it('are exactly the verbs of the host', () => {
    expect([...registered().handlers.keys()].sort()).toEqual(
      Object.keys(goodPayloads)
        .map((name) => channelOf(name as keyof Verbs))
        .sort(),
    );
  });

  it.each(names)('%s serves our own screen', async (name) => {
    const { reached, handlers } = registered();

    await handlers.get(channelOf(name))?.(from(home), ...goodPayloads[name]);

    expect(reached).toEqual([name]);
  });

  it.each(names.flatMap((name) => strangers.map(([who, event]) => ({ name, who, event }))))(
    '$name refuses $who',
    async ({ name, event }) => {
      const { reached, handlers } = registered();

      await expect(handlers.get(channelOf(name))?.(event, ...goodPayloads[name])).rejects.toThrow('Refused');

      expect(reached).toEqual([]);
    },
  );

  it.each(names)('%s refuses a payload with something more', async (name) => {
    const { reached, handlers } = registered();

    await expect(handlers.get(channelOf(name))?.(from(home), ...goodPayloads[name], 'more')).rejects.toThrow(
      'does not take',
    );

    expect(reached).toEqual([]);
  });

  it.each<[keyof Verbs, unknown[]]>([
    ['saveCase', [42, 'case']],
    ['saveCase', ['text']],
    ['saveCase', ['text', 'n'.repeat(301)]],
    ['saveCaseAs', ['text', { toString: () => '/etc/passwd' }]],
    ['saveWorkbook', ['PK', 'case']],
    ['setEdited', ['yes', 'case']],
    ['setEdited', [true, null]],
    ['openPath', ['']],
    ['openPath', [['/cases/mill.tonne']]],
    ['openPath', ['/'.repeat(4097)]],
    ['saveCaseOver', [null, 'case']],
    ['keepDraft', [undefined, 'case']],
    ['keepDraft', [42, 'case']],
    // What is given here becomes part of a path.
    ['takeDraft', ['../../0123456789']],
    ['takeDraft', ['0123456789ABCDEF']],
    ['forgetDraft', ['../preferences.js']],
    ['forgetDraft', ['']],
    ['setPreferences', [{ numberLocale: 'de_AT', theme: 'dark', currencyText: 'code', zoom: 125 }]],
    ['setPreferences', [{ numberLocale: null, theme: 'pink', currencyText: 'code', zoom: 125 }]],
    ['setPreferences', [{ numberLocale: null, theme: 'dark', currencyText: 'code', zoom: 500 }]],
    ['setPreferences', [{ numberLocale: null, theme: 'dark', currencyText: 'code', zoom: 100, more: true }]],
  ])('%s refuses %j', async (name, payload) => {
    const { reached, handlers } = registered();

    await expect(handlers.get(channelOf(name))?.(from(home), ...payload)).rejects.toThrow('does not take');

    expect(reached).toEqual([]);
  });
});
