import { randomBytes } from 'node:crypto';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { DraftFolder } from '../drafts/draft-folder.ts';
import { diskFileSystem } from '../files/file-system.ts';
import type { SaveMeans } from '../files/save-means.ts';
import { usualPreferences } from '../preferences.ts';
import { preferencesSchema } from '../preferences-schema.ts';
import { Log } from '../shell/log.ts';
import { recentSchema } from '../shell/recent-files.ts';
import { usualPlace, windowPlaceSchema } from '../shell/window-place.ts';
import { KeptValue } from './kept-value.ts';

export const diskMeans: SaveMeans = {
  files: diskFileSystem,
  wait: (milliseconds) => wait(milliseconds),
  randomLetters: () => randomBytes(4).toString('hex'),
};

/** All that the program keeps for itself, in the one folder that the system gives it. */
export function openDataFolder(folder: string) {
  return {
    preferences: new KeptValue(join(folder, 'preferences.json'), preferencesSchema, usualPreferences, diskMeans),
    recent: new KeptValue<readonly string[]>(join(folder, 'recent.json'), recentSchema, [], diskMeans),
    place: new KeptValue(join(folder, 'window.json'), windowPlaceSchema, usualPlace, diskMeans),
    drafts: new DraftFolder(join(folder, 'drafts'), diskMeans),
    log: new Log(join(folder, 'log.txt'), () => new Date()),
  };
}

export type DataFolder = ReturnType<typeof openDataFolder>;
