import type { SaveOutcome } from '../../electron/host.ts';
import { caseFileName } from './case-file-name.ts';

// The browser reads the address after the click has returned; a minute is ample for the largest case.
const keepAddressMilliseconds = 60_000;

/** Saves where the browser cannot write to a chosen file: the case arrives among the downloads. */
export function downloadCase(text: string, suggestedName: string): SaveOutcome {
  const name = caseFileName(suggestedName);
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), keepAddressMilliseconds);
  return { kind: 'saved', name };
}
