import type { Host } from '../../electron/host.ts';
import { type Preferences, usualPreferences } from '../../electron/preferences.ts';

/** How this person likes the program to look. */
export class PreferencesInHand {
  readonly #host: Pick<Host, 'preferences' | 'setPreferences'>;
  #now = $state.raw<Preferences>(usualPreferences);

  constructor(host: Pick<Host, 'preferences' | 'setPreferences'>) {
    this.#host = host;
  }

  get now(): Preferences {
    return this.#now;
  }

  /** Anew from the machine, whose menu changes the zoom by itself. */
  async load(): Promise<void> {
    this.#now = await this.#host.preferences();
  }

  async change(changed: Partial<Preferences>): Promise<void> {
    this.#now = { ...this.#now, ...changed };
    await this.#host.setPreferences(this.#now);
  }
}
