import type { SaveOutcome } from '../../electron/host.ts';

// The browser reads the address after the click has returned; a minute is ample for the largest file.
const keepAddressMilliseconds = 60_000;

/** Saves where the browser cannot write to a chosen file: the content arrives among the downloads. */
export function download(content: BlobPart, name: string): SaveOutcome {
  const address = URL.createObjectURL(new Blob([content]));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), keepAddressMilliseconds);
  return { kind: 'saved', name };
}
