import type { IpcMain, IpcMainInvokeEvent } from 'electron';
import * as v from 'valibot';
import { type ChannelName, type Channels, channelOf } from './channels.ts';
import { draftId } from './drafts/draft.ts';
import { isOwnAddress } from './own-address.ts';
import { preferencesSchema } from './preferences-schema.ts';

const name = v.pipe(v.string(), v.maxLength(300));
const path = v.pipe(v.string(), v.minLength(1), v.maxLength(4096));

/** What each channel carries. A channel that is not in this table does not exist. */
export const payloads = {
  numberLocale: v.strictTuple([]),
  startingCase: v.strictTuple([]),
  openCase: v.strictTuple([]),
  openGiven: v.strictTuple([]),
  openPath: v.strictTuple([path]),
  reloadCase: v.strictTuple([]),
  saveCase: v.strictTuple([v.string(), name]),
  saveCaseOver: v.strictTuple([v.string(), name]),
  saveCaseAs: v.strictTuple([v.string(), name]),
  saveWorkbook: v.strictTuple([v.instance(Uint8Array), name]),
  setEdited: v.strictTuple([v.boolean(), name]),
  keepDraft: v.strictTuple([v.nullable(v.string()), name]),
  leftDrafts: v.strictTuple([]),
  takeDraft: v.strictTuple([draftId]),
  forgetDraft: v.strictTuple([draftId]),
  preferences: v.strictTuple([]),
  setPreferences: v.strictTuple([preferencesSchema]),
  versions: v.strictTuple([]),
} satisfies { [Name in ChannelName]: v.GenericSchema<unknown, Parameters<Channels[Name]>> };

/** What the machine does for one window when its screen asks. */
export type Verbs = Channels;

/** The window that a sender belongs to, or undefined for a sender the program did not open. */
export type FindVerbs = (contentsId: number) => Verbs | undefined;

/** Only the top frame of a window of ours, showing a page of ours, is listened to. A frame that is gone is null. */
function verbsForSender(event: IpcMainInvokeEvent, findVerbs: FindVerbs): Verbs {
  const frame = event.senderFrame;
  const verbs = frame?.parent === null && isOwnAddress(frame.url) ? findVerbs(event.sender.id) : undefined;
  if (verbs === undefined) throw new Error('Refused: the message does not come from a screen of this program.');
  return verbs;
}

function register(ipc: Pick<IpcMain, 'handle'>, name: ChannelName, findVerbs: FindVerbs): void {
  ipc.handle(channelOf(name), async (event, ...received: unknown[]) => {
    const verbs = verbsForSender(event, findVerbs);
    const payload = v.safeParse(payloads[name], received);
    if (!payload.success) throw new Error(`Refused: “${name}” was asked with something it does not take.`);
    const verb = verbs[name] as (...given: readonly unknown[]) => Promise<unknown>;
    return verb(...payload.output);
  });
}

/** Opens every channel of the table, each behind the same two checks: who asks, and with what. */
export function registerChannels(ipc: Pick<IpcMain, 'handle'>, findVerbs: FindVerbs): void {
  for (const name of Object.keys(payloads) as ChannelName[]) register(ipc, name, findVerbs);
}
