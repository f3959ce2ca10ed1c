import { contextBridge, ipcRenderer } from 'electron';
import { type ChannelName, channelOf, commandChannel } from './channels.ts';
import type { Command, Host } from './host.ts';

function ask<Name extends ChannelName>(name: Name, ...payload: Parameters<Host[Name]>): ReturnType<Host[Name]> {
  return ipcRenderer.invoke(channelOf(name), ...payload) as ReturnType<Host[Name]>;
}

// Plain functions only: neither ipcRenderer nor an event of it, which carries its sender, may reach the page.
const host = {
  kind: 'desktop',
  numberLocale: () => ask('numberLocale'),
  startingCase: () => ask('startingCase'),
  openCase: () => ask('openCase'),
  saveCase: (text, suggestedName) => ask('saveCase', text, suggestedName),
  saveCaseAs: (text, suggestedName) => ask('saveCaseAs', text, suggestedName),
  saveWorkbook: (bytes, suggestedName) => ask('saveWorkbook', bytes, suggestedName),
  setEdited: (edited, title) => ask('setEdited', edited, title),
  onCommand: (listener) => {
    const pass = (_event: unknown, command: Command): void => listener(command);
    ipcRenderer.on(commandChannel, pass);
    return () => {
      ipcRenderer.off(commandChannel, pass);
    };
  },
} satisfies Host;

contextBridge.exposeInMainWorld('tonneHost', host);
