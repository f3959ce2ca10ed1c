import type { FileOutcome, Host, LeftDraft, SaveOutcome } from '../../electron/host.ts';
import type { CaseSession } from './case-session.svelte.ts';

/** Something to tell the person before they go on: what happened and, in the sentences, what is safe and what to do. */
export interface Notice {
  readonly title: string;
  readonly sentences: readonly string[];
  /** What is safe, where the sentences do not say so themselves. */
  readonly safe: string;
}

/** Where the case on the screen comes from and goes to. */
export class CaseOnFile {
  readonly #host: Host;
  readonly #session: CaseSession;
  readonly #demonstration: string;
  #name = $state.raw<string | null>(null);
  /** Whether the file that the host has open is this case's own. */
  #isPlaced = false;
  #savedText = $state.raw('');
  #isDemonstration = $state.raw(true);
  #savedAt = $state.raw<number | null>(null);
  #notice = $state.raw<Notice | null>(null);
  #leaving = $state.raw<(() => Promise<void>) | null>(null);
  #isReadOnly = $state.raw(false);
  #foreignChange = $state.raw<'seen' | 'met by a save' | null>(null);

  constructor(host: Host, session: CaseSession, demonstration: string) {
    this.#host = host;
    this.#session = session;
    this.#demonstration = demonstration;
  }

  /** Null for a case that has no file yet, such as the demonstration. */
  get name(): string | null {
    return this.#name;
  }

  get isDemonstration(): boolean {
    return this.#isDemonstration;
  }

  /** When it was last saved in this sitting, as a time stamp. */
  get savedAt(): number | null {
    return this.#savedAt;
  }

  get isEdited(): boolean {
    return this.#session.text !== this.#savedText;
  }

  /** Whether the file can only be read; a save then asks for another place. */
  get isReadOnly(): boolean {
    return this.#isReadOnly;
  }

  /** Another program changed the open file, and the person has not said yet what shall become of it. */
  get foreignChange(): 'seen' | 'met by a save' | null {
    return this.#foreignChange;
  }

  get notice(): Notice | null {
    return this.#notice;
  }

  /** Whether the person is being asked what to do with unsaved edits before another case is opened. */
  get asksBeforeLeaving(): boolean {
    return this.#leaving !== null;
  }

  async start(): Promise<void> {
    const outcome = await this.#host.startingCase();
    if (outcome !== null) await this.#take(outcome);
    if (this.#session.spread === null) await this.#openDemonstration();
  }

  open(): Promise<void> {
    return this.#leave(async () => this.#take(await this.#host.openCase()));
  }

  /** Opens what the person chose outside the screen. */
  openGiven(): Promise<void> {
    return this.#leave(async () => this.#take(await this.#host.openGiven()));
  }

  openDropped(file: File): Promise<void> {
    return this.#leave(async () => this.#take(await this.#host.openDropped(file)));
  }

  /** Goes on with work that an earlier run left unsaved. It stays unsaved until it is saved. Says whether it is on the screen. */
  async openDraft(draft: LeftDraft): Promise<boolean> {
    const sentences = await this.#session.open(draft.text);
    if (sentences.length > 0) {
      this.#notice = {
        title: `The draft of “${draft.title}” cannot be read`,
        sentences,
        safe: 'It was not thrown away.',
      };
      return false;
    }
    const taken = await this.#host.takeDraft(draft.id);
    this.#placed(taken.kind === 'taken' ? taken.name : null);
    this.#isDemonstration = false;
    // What the file holds now is what is saved; a draft without its file is not saved anywhere.
    this.#savedText = this.#name === null ? '' : (draft.fileText ?? '');
    if (taken.kind === 'failed') this.tell('The draft is open as a new case', taken.sentence);
    return true;
  }

  /** The machine saw that another program changed the open file. */
  seeForeignChange(): void {
    if (this.#isPlaced) this.#foreignChange ??= 'seen';
  }

  async readFileAgain(): Promise<void> {
    this.#foreignChange = null;
    await this.#take(await this.#host.reloadCase());
  }

  /** Replaces what another program wrote. */
  async saveOver(): Promise<boolean> {
    this.#foreignChange = null;
    return this.#saved(await this.#host.saveCaseOver(this.#session.text, this.#suggestedName()));
  }

  keepForeignChange(): void {
    this.#foreignChange = null;
  }

  openDemonstration(): Promise<void> {
    return this.#leave(() => this.#openDemonstration());
  }

  /** Goes on with a case that was started anew; it has no file yet, and is worth asking about before it is left. */
  openNew(text: string, goOn: () => void): Promise<void> {
    return this.#leave(async () => {
      const sentences = await this.#session.open(text);
      if (sentences.length > 0) {
        this.#notice = { title: 'The new case could not be opened', sentences, safe: '' };
        return;
      }
      this.#placed(null);
      this.#savedText = '';
      this.#isDemonstration = false;
      goOn();
    });
  }

  async save(): Promise<boolean> {
    // Where the host's open file holds something else, a place is asked for rather than that file written over.
    if (!this.#isPlaced) return this.saveAs();
    return this.#saved(await this.#host.saveCase(this.#session.text, this.#suggestedName()));
  }

  async saveAs(): Promise<boolean> {
    this.#foreignChange = null;
    return this.#saved(await this.#host.saveCaseAs(this.#session.text, this.#suggestedName()));
  }

  putNoticeAway(): void {
    this.#notice = null;
  }

  async leaveAfterSaving(): Promise<void> {
    const leave = this.#leaving;
    this.#leaving = null;
    if (await this.save()) await leave?.();
  }

  async leaveWithoutSaving(): Promise<void> {
    const leave = this.#leaving;
    this.#leaving = null;
    await leave?.();
  }

  stay(): void {
    this.#leaving = null;
  }

  async #leave(leave: () => Promise<void>): Promise<void> {
    if (this.isEdited) this.#leaving = leave;
    else await leave();
  }

  async #openDemonstration(): Promise<void> {
    const sentences = await this.#session.open(this.#demonstration);
    if (sentences.length > 0)
      this.#notice = { title: 'The demonstration case could not be opened', sentences, safe: '' };
    else this.#placed(null);
  }

  async #take(outcome: FileOutcome): Promise<void> {
    if (outcome.kind === 'cancelled') return;
    if (outcome.kind === 'failed') {
      this.tell('No file was opened', outcome.sentence);
      return;
    }
    const sentences = await this.#session.open(outcome.text);
    if (sentences.length === 0) {
      this.#placed(outcome.name);
      this.#isReadOnly = outcome.isReadOnly ?? false;
      return;
    }
    // The host now has the refused file open.
    this.#isPlaced = false;
    const safe = 'The file was left as it is, and the case on the screen is as it was.';
    this.#notice = { title: `“${outcome.name}” cannot be read as a case`, sentences, safe };
  }

  #saved(outcome: SaveOutcome): boolean {
    if (outcome.kind === 'failed') this.tell('The case was not saved', outcome.sentence);
    if (outcome.kind === 'changed') this.#foreignChange = 'met by a save';
    if (outcome.kind !== 'saved') return false;
    this.#placed(outcome.name);
    this.#savedAt = Date.now();
    return true;
  }

  /** Something to tell before the person goes on. */
  tell(title: string, sentence: string): void {
    this.#notice = { title, sentences: [sentence], safe: '' };
  }

  #placed(name: string | null): void {
    this.#name = name;
    this.#isReadOnly = false;
    this.#foreignChange = null;
    this.#isPlaced = name !== null;
    this.#savedText = this.#session.text;
    this.#isDemonstration = name === null;
    this.#savedAt = null;
  }

  #suggestedName(): string {
    return this.#name ?? this.#session.spread?.title ?? 'Case';
  }
}
