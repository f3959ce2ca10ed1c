interface Refusal {
  readonly kind: 'cancelled';
}
interface Failure {
  readonly kind: 'failed';
  readonly sentence: string;
}

// Names of DOMException as the File System standard and its access draft use them.
const reasons: Readonly<Record<string, { readonly because: string; readonly next: string }>> = {
  NotAllowedError: { because: 'the browser was not given leave to use the file', next: 'Try again and allow it' },
  SecurityError: {
    because: 'the browser asks for a fresh click before it shows a file window',
    next: 'Choose the command again',
  },
  NotFoundError: { because: 'the file has been moved or deleted', next: 'Choose another place with Save As' },
  NoModificationAllowedError: {
    because: 'another tab or program is using the file',
    next: 'Close it there and try again',
  },
  QuotaExceededError: { because: 'the disk is full', next: 'Make room, or choose another place with Save As' },
  NotReadableError: { because: 'the file could not be read', next: 'Check that its drive is connected and try again' },
};

/** Turns what a file picker threw into an outcome: closing the picker is a choice, everything else a sentence. */
export function explainBrowserFailure(failure: unknown, what: string, safe: string): Refusal | Failure {
  const name = failure instanceof Error || failure instanceof DOMException ? failure.name : '';
  if (name === 'AbortError') return { kind: 'cancelled' };
  const reason = reasons[name];
  if (reason === undefined)
    return { kind: 'failed', sentence: `${what}. ${safe}. Try again, or choose another place.` };
  return { kind: 'failed', sentence: `${what}: ${reason.because}. ${safe}. ${reason.next}.` };
}
