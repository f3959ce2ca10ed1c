import type { MessageBoxOptions, OpenDialogOptions, SaveDialogOptions } from 'electron';
import type { DialogAnswer, SeenDialog } from '../driver.ts';
import type { Ledger } from './ledger.ts';

/** Electron's `dialog`, answered from a queue. */
export class StandInDialogs {
  readonly seen: SeenDialog[] = [];
  readonly #answers: DialogAnswer[] = [];
  readonly #ledger: Ledger;

  constructor(ledger: Ledger) {
    this.#ledger = ledger;
  }

  queue(answer: DialogAnswer): void {
    this.#answers.push(answer);
  }

  /** Notes the answers for which no dialog came. */
  settle(): void {
    for (const answer of this.#answers) this.#ledger.addFault(`No dialog came for ${JSON.stringify(answer)}.`);
  }

  #answer<Kind extends DialogAnswer['kind']>(dialog: SeenDialog & { readonly kind: Kind }) {
    this.seen.push(dialog);
    const next = this.#answers.at(0);
    if (next?.kind === dialog.kind) {
      this.#answers.shift();
      return next as DialogAnswer & { readonly kind: Kind };
    }
    this.#ledger.addFault(`An unexpected dialog was shown: ${JSON.stringify(dialog)}.`);
    return null;
  }

  /** The object that main imports. */
  readonly dialog = {
    showOpenDialog: (_window: unknown, { title = '' }: OpenDialogOptions) => {
      const path = this.#answer({ kind: 'open', message: title, suggestedName: '', buttons: [] })?.path ?? null;
      return Promise.resolve({ canceled: path === null, filePaths: path === null ? [] : [path] });
    },
    showSaveDialog: (_window: unknown, { title = '', defaultPath = '' }: SaveDialogOptions) => {
      const path =
        this.#answer({ kind: 'save', message: title, suggestedName: defaultPath, buttons: [] })?.path ?? null;
      return Promise.resolve({ canceled: path === null, filePath: path ?? '' });
    },
    showMessageBox: (_window: unknown, { message, buttons = [], cancelId = 0 }: MessageBoxOptions) => {
      const answer = this.#answer({ kind: 'message', message, suggestedName: '', buttons });
      const place = answer === null ? cancelId : buttons.indexOf(answer.button);
      if (place < 0) this.#ledger.addFault(`“${message}” has no button “${answer?.button ?? ''}”.`);
      return Promise.resolve({ response: place < 0 ? cancelId : place, checkboxChecked: false });
    },
    showErrorBox: (title: string, content: string) => {
      this.#ledger.addFault(`The program broke down: ${title}. ${content}`);
    },
  };
}
