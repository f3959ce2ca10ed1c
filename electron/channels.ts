import type { FileOutcome, Host } from './host.ts';

/** The verbs of Host that cross to the machine, each on a channel of its own. */
export interface Channels extends Omit<Host, 'kind' | 'onCommand' | 'openDropped'> {
  /** Only the preload asks this, with the place that the system gives for a dropped file; the screen has no such verb. */
  readonly openPath: (path: string) => Promise<FileOutcome>;
}

export type ChannelName = keyof Channels;

/** The one channel in the other direction: a command of the menu for the screen. */
export const commandChannel = 'tonne:command';

export function channelOf(name: ChannelName): string {
  return `tonne:${name}`;
}
