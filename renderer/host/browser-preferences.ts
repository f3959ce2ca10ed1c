import * as v from 'valibot';
import { type Preferences, usualPreferences } from '../../electron/preferences.ts';
import { preferencesSchema } from '../../electron/preferences-schema.ts';

const entry = 'tonne.preferences';

/** As this browser keeps them; what cannot be read gives the usual ones. */
export function readPreferences(): Preferences {
  try {
    const read = v.safeParse(preferencesSchema, JSON.parse(localStorage.getItem(entry) ?? ''));
    return read.success ? read.output : usualPreferences;
  } catch {
    return usualPreferences;
  }
}

/** A browser that keeps nothing only means that they are not remembered. */
export function keepPreferences(preferences: Preferences): void {
  try {
    localStorage.setItem(entry, JSON.stringify(preferences));
  } catch {
    // They are in force on this page all the same.
  }
}
