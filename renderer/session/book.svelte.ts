import type { Command, Host } from '../../electron/host.ts';
import { startEngine, type EngineClient } from '../engine/engine-client.ts';
import { NumberStyle } from '../numbers/number-style.ts';
import { Announcer } from './announcer.svelte.ts';
import { CaseOnFile } from './case-on-file.svelte.ts';
import { CaseSession } from './case-session.svelte.ts';
import { EntryInHand } from './entry-in-hand.ts';
import { Folding } from './folding.svelte.ts';
import { LotsPlace } from './lots-place.svelte.ts';
import { LinePlace } from './line-place.svelte.ts';
import { Pages } from './pages.svelte.ts';
import { WastePlace } from './waste-place.svelte.ts';
import { WhatIfPlace } from './what-if-place.svelte.ts';

/** Everything the screens share: the case, its file, how numbers are written, and the entry being typed. */
export class Book {
  readonly session: CaseSession;
  readonly file: CaseOnFile;
  readonly folding = new Folding();
  readonly inHand = new EntryInHand();
  readonly pages = new Pages();
  readonly linePlace = new LinePlace();
  readonly wastePlace = new WastePlace();
  readonly whatIfPlace = new WhatIfPlace();
  readonly lotsPlace = new LotsPlace();
  readonly announcer = new Announcer();
  readonly #host: Host;
  #locale = $state.raw('en');
  #draft: Book | null = null;

  readonly numbers = $derived.by(() => new NumberStyle(this.#locale, this.session.spread?.currency ?? 'EUR'));

  readonly #verbs: { readonly [Name in Command]: () => Promise<unknown> } = {
    open: () => this.file.open(),
    demonstration: () => this.file.openDemonstration(),
    save: () => this.#afterEntry(() => this.file.save()),
    'save-as': () => this.#afterEntry(() => this.file.saveAs()),
    undo: () => this.#beingEdited().#undo(),
    redo: () => this.#beingEdited().session.redo(),
    'new-case': () => {
      this.pages.turnTo('new-case');
      return Promise.resolve();
    },
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

  /** A book of its own for a case that is being started, so that the open one stays as it is until it is left. */
  draft(): Book {
    this.#draft ??= new Book(this.#host, startEngine(), '');
    this.#draft.#locale = this.#locale;
    return this.#draft;
  }

  do(command: Command): Promise<unknown> {
    return this.#verbs[command]();
  }

  #beingEdited(): Book {
    return this.#draft !== null && this.pages.current === 'new-case' ? this.#draft : this;
  }

  #undo(): Promise<unknown> {
    return this.inHand.revert() ? Promise.resolve() : this.session.undo();
  }

  // What stands typed in a slot belongs to the case that is saved; if it cannot be read, nothing is saved until it can.
  async #afterEntry(save: () => Promise<unknown>): Promise<unknown> {
    return (await this.inHand.commit()) ? save() : undefined;
  }
}
