import type { Preferences } from './preferences.ts';

/**
 * The verbs a screen may ask of the machine, and nothing else. Two implementations: the desktop (through the preload) and a plain
 * browser. Paths never cross this line: the host remembers which file is open, and the screen knows its name only.
 */
export interface Host {
  readonly kind: 'desktop' | 'browser';
  /** The region whose number format the system uses, as a BCP 47 tag ("de-AT"); units and words stay English. */
  numberLocale(): Promise<string>;
  /** The case the program was started with, or null: then the screen opens the demonstration case it carries. */
  startingCase(): Promise<FileOutcome | null>;
  /** Asks the person for a case file and reads it. */
  openCase(): Promise<FileOutcome>;
  /** Reads the case that the person chose outside the screen (the list of recent files), once the screen is ready to leave its own. */
  openGiven(): Promise<FileOutcome>;
  /** Reads a case that was dropped on the window. */
  openDropped(file: File): Promise<FileOutcome>;
  /** Reads the open file again, as another program left it. */
  reloadCase(): Promise<FileOutcome>;
  /** Writes to the file that is open; asks for a place when there is none. */
  saveCase(text: string, suggestedName: string): Promise<SaveOutcome>;
  /** Writes to the file that is open although another program changed it; what that one wrote is kept as .bak. */
  saveCaseOver(text: string, suggestedName: string): Promise<SaveOutcome>;
  /** Asks for a place, writes there, and goes on with that file. */
  saveCaseAs(text: string, suggestedName: string): Promise<SaveOutcome>;
  /** Asks for a place and writes an .xlsx file there. The case that is open, and its unsaved edits, stay as they are. */
  saveWorkbook(bytes: Uint8Array, suggestedName: string): Promise<SaveOutcome>;
  /** Tells the window whether there are unsaved edits: the title shows it and closing asks. */
  setEdited(edited: boolean, title: string): Promise<void>;
  /** Keeps unsaved work where a crash or a power cut cannot take it; null when nothing is unsaved any more. */
  keepDraft(text: string | null, title: string): Promise<KeepOutcome>;
  /** Unsaved work that an earlier run left behind, newest first. Each is handed to one window only. */
  leftDrafts(): Promise<readonly LeftDraft[]>;
  /** Goes on with a draft: with its file where that is still what the draft began from, else without one. */
  takeDraft(id: string): Promise<TakenDraft>;
  /** Throws a draft away, because the person said so. */
  forgetDraft(id: string): Promise<void>;
  preferences(): Promise<Preferences>;
  setPreferences(preferences: Preferences): Promise<void>;
  /** Which program this is, and what it runs on. */
  versions(): Promise<readonly Version[]>;
  /** Calls back when the menu is used. Returns a function that ends the subscription. */
  onCommand(listener: (command: Command) => void): () => void;
}

/** What the menu, or the machine, may ask of the screen. */
export type Command =
  | 'new-case'
  | 'open'
  | 'open-given'
  | 'save'
  | 'save-as'
  | 'save-workbook'
  | 'demonstration'
  | 'undo'
  | 'redo'
  | 'print'
  | 'preferences'
  | 'about'
  | 'file-changed';

export type FileOutcome =
  | { readonly kind: 'read'; readonly name: string; readonly text: string; readonly isReadOnly?: boolean }
  | { readonly kind: 'cancelled' }
  | { readonly kind: 'failed'; readonly sentence: string };

export type SaveOutcome =
  | { readonly kind: 'saved'; readonly name: string }
  | { readonly kind: 'cancelled' }
  /** Nothing was written: another program changed the file since it was opened here. */
  | { readonly kind: 'changed'; readonly name: string }
  | { readonly kind: 'failed'; readonly sentence: string };

export type KeepOutcome = { readonly kind: 'kept' } | { readonly kind: 'failed'; readonly sentence: string };

/** Work that was never saved. `at` is a time stamp; `name` is the file's, or null where the case had none yet. */
export interface LeftDraft {
  readonly id: string;
  readonly title: string;
  readonly name: string | null;
  readonly at: number;
  readonly text: string;
  /** Whether the draft's file is still what the draft began from. `newer`: saved after the draft was kept. */
  readonly file: 'none' | 'same' | 'changed' | 'newer' | 'gone';
  /** What the file holds now, to compare with; null where there is none or it cannot be read. */
  readonly fileText: string | null;
}

/** `name` is the file that a save will go to, or null: then it asks for a place. */
export type TakenDraft =
  { readonly kind: 'taken'; readonly name: string | null } | { readonly kind: 'failed'; readonly sentence: string };

export interface Version {
  readonly name: string;
  readonly version: string;
}
