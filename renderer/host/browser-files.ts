import type { FileOutcome, SaveOutcome } from '../../electron/host.ts';

/** The ways a browser offers to open and save; which one, depends on the browser. */
export interface BrowserFiles {
  open(): Promise<FileOutcome>;
  save(text: string, suggestedName: string): Promise<SaveOutcome>;
  saveAs(text: string, suggestedName: string): Promise<SaveOutcome>;
  saveWorkbook(bytes: Uint8Array, suggestedName: string): Promise<SaveOutcome>;
}
