import type { Host } from '../../electron/host.ts';
import type { WorkbookPlan } from '../../src/index.ts';
import type { CaseSession } from './case-session.svelte.ts';

/** What turns a plan into the bytes of a file. */
export type WriteBook = (plan: WorkbookPlan) => Promise<Uint8Array>;

/** The case as a workbook for others: it is made and put where the person says; the case and its file stay as they are. */
export class WorkbookOnFile {
  readonly #host: Pick<Host, 'saveWorkbook'>;
  readonly #session: Pick<CaseSession, 'workbook' | 'tellFault' | 'spread'>;
  readonly #tell: (title: string, sentence: string) => void;
  readonly #say: (text: string) => void;
  readonly #write: WriteBook;
  #isBeingMade = $state.raw(false);

  /** `tell` lays a notice over the book; `say` speaks in passing. */
  constructor(
    host: Pick<Host, 'saveWorkbook'>,
    session: Pick<CaseSession, 'workbook' | 'tellFault' | 'spread'>,
    tell: (title: string, sentence: string) => void,
    say: (text: string) => void,
    write: WriteBook,
  ) {
    this.#host = host;
    this.#session = session;
    this.#tell = tell;
    this.#say = say;
    this.#write = write;
  }

  /** It takes a second or two; asked again meanwhile, nothing more is made. */
  get isBeingMade(): boolean {
    return this.#isBeingMade;
  }

  async save(name: string): Promise<void> {
    if (this.#isBeingMade || this.#session.spread === null) return;
    this.#isBeingMade = true;
    try {
      const bytes = await this.#write(await this.#session.workbook());
      const outcome = await this.#host.saveWorkbook(bytes, name);
      if (outcome.kind === 'saved') this.#say(`Workbook saved as ${outcome.name}`);
      if (outcome.kind === 'failed') this.#tell('The workbook was not saved', outcome.sentence);
    } catch (fault) {
      this.#session.tellFault(fault);
    } finally {
      this.#isBeingMade = false;
    }
  }
}
