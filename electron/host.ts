/**
 * The verbs a screen may ask of the machine, and nothing else. Two implementations: the desktop (through the preload) and a plain
 * browser. Paths never cross this line: the host remembers which file is open, and the screen knows its name only.
 */
export interface Host {
  readonly kind: 'desktop' | 'browser';
  /** The region whose number format the person uses, as a BCP 47 tag ("de-AT"); units and words stay English. */
  numberLocale(): Promise<string>;
  /** The case the program was started with, or null: then the screen opens the demonstration case it carries. */
  startingCase(): Promise<FileOutcome | null>;
  /** Asks the person for a case file and reads it. */
  openCase(): Promise<FileOutcome>;
  /** Writes to the file that is open; asks for a place when there is none. */
  saveCase(text: string, suggestedName: string): Promise<SaveOutcome>;
  /** Asks for a place, writes there, and goes on with that file. */
  saveCaseAs(text: string, suggestedName: string): Promise<SaveOutcome>;
  /** Asks for a place and writes an .xlsx file there. The case that is open, and its unsaved edits, stay as they are. */
  saveWorkbook(bytes: Uint8Array, suggestedName: string): Promise<SaveOutcome>;
  /** Tells the window whether there are unsaved edits: the title shows it and closing asks. */
  setEdited(edited: boolean, title: string): Promise<void>;
  /** Calls back when the menu is used. Returns a function that ends the subscription. */
  onCommand(listener: (command: Command) => void): () => void;
}

/** What the menu may ask of the screen. */
export type Command = 'new-case' | 'open' | 'save' | 'save-as' | 'demonstration' | 'undo' | 'redo';

export type FileOutcome =
  | { readonly kind: 'read'; readonly name: string; readonly text: string }
  | { readonly kind: 'cancelled' }
  | { readonly kind: 'failed'; readonly sentence: string };

export type SaveOutcome =
  | { readonly kind: 'saved'; readonly name: string }
  | { readonly kind: 'cancelled' }
  | { readonly kind: 'failed'; readonly sentence: string };
