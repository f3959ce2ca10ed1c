import { contextBridge, ipcRenderer, webUtils } from 'electron';
import { type ChannelName, type Channels, channelOf, commandChannel } from './channels.ts';
import type { Command, FileOutcome, Host } from './host.ts';

function ask<Name extends ChannelName>(name: Name, ...payload: Parameters<Channels[Name]>): ReturnType<Channels[Name]> {
  return ipcRenderer.invoke(channelOf(name), ...payload) as ReturnType<Channels[Name]>;
}

// Only a file that the person really dropped has a place on the disk; one that the page made itself has none.
function openDropped(file: File): Promise<FileOutcome> {
  const path = webUtils.getPathForFile(file);
  if (path !== '') return ask('openPath', path);
  const sentence = `“${file.name}” was not opened: it is not a file on this machine. Save it there first and open it then.`;
  return Promise.resolve({ kind: 'failed', sentence });
}

// Plain functions only: neither ipcRenderer nor an event of it, which carries its sender, may reach the page.
const host = {
  kind: 'desktop',
  numberLocale: () => ask('numberLocale'),
  startingCase: () => ask('startingCase'),
  openCase: () => ask('openCase'),
  openGiven: () => ask('openGiven'),
  openDropped: (file) => openDropped(file),
  reloadCase: () => ask('reloadCase'),
  saveCase: (text, suggestedName) => ask('saveCase', text, suggestedName),
  saveCaseOver: (text, suggestedName) => ask('saveCaseOver', text, suggestedName),
  saveCaseAs: (text, suggestedName) => ask('saveCaseAs', text, suggestedName),
  saveWorkbook: (bytes, suggestedName) => ask('saveWorkbook', bytes, suggestedName),
  setEdited: (edited, title) => ask('setEdited', edited, title),
  keepDraft: (text, title) => ask('keepDraft', text, title),
  leftDrafts: () => ask('leftDrafts'),
  takeDraft: (id) => ask('takeDraft', id),
  forgetDraft: (id) => ask('forgetDraft', id),
  preferences: () => ask('preferences'),
  setPreferences: (preferences) => ask('setPreferences', preferences),
  versions: () => ask('versions'),
  onCommand: (listener) => {
    const pass = (_event: unknown, command: Command): void => listener(command);
    ipcRenderer.on(commandChannel, pass);
    return () => {
      ipcRenderer.off(commandChannel, pass);
    };
  },
} satisfies Host;

contextBridge.exposeInMainWorld('tonneHost', host);
