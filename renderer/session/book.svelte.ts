import type { Command, Host } from '../../electron/host.ts';
import type { EngineClient } from '../engine/engine-client.ts';
import { NumberStyle } from '../numbers/number-style.ts';
import { CaseOnFile } from './case-on-file.svelte.ts';
import { CaseSession } from './case-session.svelte.ts';
import { EntryInHand } from './entry-in-hand.ts';
import { Folding } from './folding.svelte.ts';

/** Everything the screens share: the case, its file, how numbers are written, and the entry being typed. */
export class Book {
  readonly session: CaseSession;
  readonly file: CaseOnFile;
  readonly folding = new Folding();
  readonly inHand = new EntryInHand();
  readonly #host: Host;
  #locale = $state.raw('en');

  readonly numbers = $derived.by(() => new NumberStyle(this.#locale, this.session.spread?.currency ?? 'EUR'));

  readonly #verbs: { readonly [Name in Command]: () => Promise<unknown> } = {
    open: () => this.file.open(),
    demonstration: () => this.file.openDemonstration(),
    save: () => this.#afterEntry(() => this.file.save()),
    'save-as': () => this.#afterEntry(() => this.file.saveAs()),
    undo: () => (this.inHand.revert() ? Promise.resolve() : this.session.undo()),
    redo: () => this.session.redo(),
  };

  constructor(host: Host, engine: Pick<EngineClient, 'ask' | 'askNewest'>, demonstration: string) {
    this.#host = host;
    this.session = new CaseSession(engine);
    this.file = new CaseOnFile(host, this.session, demonstration);
  }

  async start(): Promise<void> {
    this.#locale = await this.#host.numberLocale();
    await this.file.start();
  }

  do(command: Command): Promise<unknown> {
    return this.#verbs[command]();
  }

  // What stands typed in a slot belongs to the case that is saved; if it cannot be read, nothing is saved until it can.
  async #afterEntry(save: () => Promise<unknown>): Promise<unknown> {
    return (await this.inHand.commit()) ? save() : undefined;
  }
}
