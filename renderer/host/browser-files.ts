import type { FileOutcome, SaveOutcome } from '../../electron/host.ts';

/** The ways a browser offers to open and save; which one, depends on the browser. */
export interface BrowserFiles {
  open(): Promise<FileOutcome>;
  save(text: string, suggestedName: string): Promise<SaveOutcome>;
  /** Writes although another program changed the file. */
  saveOver(text: string, suggestedName: string): Promise<SaveOutcome>;
  /** Reads the open file again, where the browser remembers it. */
  reload(): Promise<FileOutcome>;
  /** From now on no file is open: the next save asks for a place. */
  leave(): void;
  saveAs(text: string, suggestedName: string): Promise<SaveOutcome>;
  saveWorkbook(bytes: Uint8Array, suggestedName: string): Promise<SaveOutcome>;
}
