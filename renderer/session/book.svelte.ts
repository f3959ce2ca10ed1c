import type { Command, Host, Version } from '../../electron/host.ts';
import { startEngine, type EngineClient } from '../engine/engine-client.ts';
import { writeInWorker } from '../engine/workbook/write-in-worker.ts';
import { NumberStyle } from '../numbers/number-style.ts';
import { Announcer } from './announcer.svelte.ts';
import { CaseOnFile } from './case-on-file.svelte.ts';
import { CaseSession } from './case-session.svelte.ts';
import { DraftKeeper } from './draft-keeper.ts';
import { EntryInHand } from './entry-in-hand.ts';
import { Folding } from './folding.svelte.ts';
import { LeftWork } from './left-work.svelte.ts';
import { LotsPlace } from './lots-place.svelte.ts';
import { LinePlace } from './line-place.svelte.ts';
import { Pages } from './pages.svelte.ts';
import { PreferencesInHand } from './preferences-in-hand.svelte.ts';
import { WastePlace } from './waste-place.svelte.ts';
import { WhatIfPlace } from './what-if-place.svelte.ts';
import { WorkbookOnFile, type WriteBook } from './workbook-on-file.svelte.ts';

type ProgramSheet = 'preferences' | 'about';

/** Everything the screens share: the case, its file, how numbers are written, and the entry being typed. */
export class Book {
  readonly session: CaseSession;
  readonly file: CaseOnFile;
  readonly workbook: WorkbookOnFile;
  readonly folding = new Folding();
  readonly inHand = new EntryInHand();
  readonly pages = new Pages();
  readonly linePlace = new LinePlace();
  readonly wastePlace = new WastePlace();
  readonly whatIfPlace = new WhatIfPlace();
  readonly lotsPlace = new LotsPlace();
  readonly announcer = new Announcer();
  readonly preferences: PreferencesInHand;
  readonly leftWork: LeftWork;
  readonly drafts: DraftKeeper;
  readonly #host: Host;
  #systemLocale = $state.raw('en');
  #sheet = $state.raw<ProgramSheet | null>(null);
  #draft: Book | null = null;

  readonly numbers = $derived.by(() => {
    const { numberLocale, currencyText } = this.preferences.now;
    return new NumberStyle(numberLocale ?? this.#systemLocale, this.session.spread?.currency ?? 'EUR', currencyText);
  });

  readonly #verbs: { readonly [Name in Command]: () => Promise<unknown> } = {
    open: () => this.file.open(),
    'open-given': () => this.file.openGiven(),
    'file-changed': () => {
      this.file.seeForeignChange();
      return Promise.resolve();
    },
    print: () =>
      this.#afterEntry(() => {
        print();
        return Promise.resolve();
      }),
    preferences: () => this.#lay('preferences'),
    about: () => this.#lay('about'),
    demonstration: () => this.file.openDemonstration(),
    save: () => this.#afterEntry(() => this.file.save()),
    'save-as': () => this.#afterEntry(() => this.file.saveAs()),
    'save-workbook': () => this.#afterEntry(() => this.#saveWorkbook()),
    undo: () => this.#beingEdited().#undo(),
    redo: () => this.#beingEdited().session.redo(),
    'new-case': () => {
      this.pages.turnTo('new-case');
      return Promise.resolve();
    },
  };

  constructor(
    host: Host,
    engine: Pick<EngineClient, 'ask' | 'askNewest'>,
    demonstration: string,
    write: WriteBook = writeInWorker,
  ) {
    this.#host = host;
    this.session = new CaseSession(engine);
    this.file = new CaseOnFile(host, this.session, demonstration);
    this.preferences = new PreferencesInHand(host);
    this.leftWork = new LeftWork(host, this.file);
    this.drafts = new DraftKeeper(
      (text, title) => host.keepDraft(text, title),
      (sentence) => this.file.tell('Your edits are not kept for the case of a crash', sentence),
    );
    this.workbook = new WorkbookOnFile(
      host,
      this.session,
      (title, sentence) => this.file.tell(title, sentence),
      (text) => this.announcer.say(text),
      write,
    );
  }

  async start(): Promise<void> {
    this.#systemLocale = await this.#host.numberLocale();
    await this.preferences.load();
    await this.file.start();
    await this.leftWork.load();
  }

  /** The number format that the system uses, before the person's own choice. */
  get systemLocale(): string {
    return this.#systemLocale;
  }

  /** What lies over the book about the program itself. */
  get sheet(): ProgramSheet | null {
    return this.#sheet;
  }

  putSheetAway(): void {
    this.#sheet = null;
  }

  versions(): Promise<readonly Version[]> {
    return this.#host.versions();
  }

  /** A book of its own for a case that is being started, so that the open one stays as it is until it is left. */
  draft(): Book {
    this.#draft ??= new Book(this.#host, startEngine(), '');
    this.#draft.#systemLocale = this.#systemLocale;
    void this.#draft.preferences.load();
    return this.#draft;
  }

  do(command: Command): Promise<unknown> {
    return this.#verbs[command]();
  }

  async #lay(sheet: ProgramSheet): Promise<void> {
    await this.preferences.load();
    this.#sheet = sheet;
  }

  #beingEdited(): Book {
    return this.#draft !== null && this.pages.current === 'new-case' ? this.#draft : this;
  }

  #saveWorkbook(): Promise<void> {
    const name = (this.file.name ?? this.session.spread?.title ?? 'Case').replace(/\.tonne$/u, '');
    return this.workbook.save(name);
  }

  #undo(): Promise<unknown> {
    return this.inHand.revert() ? Promise.resolve() : this.session.undo();
  }

  // What stands typed in a slot belongs to the case that is saved; if it cannot be read, nothing is saved until it can.
  async #afterEntry(save: () => Promise<unknown>): Promise<unknown> {
    return (await this.inHand.commit()) ? save() : undefined;
  }
}
