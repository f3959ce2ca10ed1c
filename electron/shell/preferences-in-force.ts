import type { KeptValue } from '../data/kept-value.ts';
import { type Preferences, usualPreferences } from '../preferences.ts';

/** The preferences as they are now: read once, then kept, and shown wherever they matter. */
export class PreferencesInForce {
  readonly #kept: Pick<KeptValue<Preferences>, 'read' | 'write'>;
  readonly #show: (preferences: Preferences) => void;
  #now = usualPreferences;

  constructor(kept: Pick<KeptValue<Preferences>, 'read' | 'write'>, show: (preferences: Preferences) => void) {
    this.#kept = kept;
    this.#show = show;
  }

  get now(): Preferences {
    return this.#now;
  }

  async load(): Promise<void> {
    this.#now = await this.#kept.read();
    this.#show(this.#now);
  }

  /** In force at once; a disk that takes no more only means that they are not remembered. */
  async set(preferences: Preferences): Promise<void> {
    this.#now = preferences;
    this.#show(preferences);
    await this.#kept.write(preferences).catch(() => undefined);
  }
}
