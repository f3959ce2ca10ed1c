import type { Host, LeftDraft } from '../../electron/host.ts';
import type { CaseOnFile } from './case-on-file.svelte.ts';

/** Work that an earlier run left unsaved, until the person has said of each piece what becomes of it. */
export class LeftWork {
  readonly #host: Pick<Host, 'leftDrafts' | 'forgetDraft'>;
  readonly #file: Pick<CaseOnFile, 'openDraft'>;
  #drafts = $state.raw<readonly LeftDraft[]>([]);

  constructor(host: Pick<Host, 'leftDrafts' | 'forgetDraft'>, file: Pick<CaseOnFile, 'openDraft'>) {
    this.#host = host;
    this.#file = file;
  }

  /** The piece that is asked about; null when none is left. */
  get current(): LeftDraft | null {
    return this.#drafts[0] ?? null;
  }

  get waiting(): number {
    return this.#drafts.length;
  }

  async load(): Promise<void> {
    this.#drafts = await this.#host.leftDrafts();
  }

  /** Goes on with this one. What else is left is asked about at the next start, so that nothing is opened over it. */
  async goOn(draft: LeftDraft): Promise<void> {
    this.#drafts = [];
    await this.#file.openDraft(draft);
  }

  async throwAway(draft: LeftDraft): Promise<void> {
    this.#drafts = this.#drafts.filter((each) => each !== draft);
    await this.#host.forgetDraft(draft.id);
  }

  /** Everything stays as it is, and is asked about at the next start. */
  later(): void {
    this.#drafts = [];
  }
}
