import type { Host } from './host.ts';

/** The verbs of Host that cross to the machine, each on a channel of its own. */
export type ChannelName = Exclude<keyof Host, 'kind' | 'onCommand'>;

/** The one channel in the other direction: a command of the menu for the screen. */
export const commandChannel = 'tonne:command';

export function channelOf(name: ChannelName): string {
  return `tonne:${name}`;
}
