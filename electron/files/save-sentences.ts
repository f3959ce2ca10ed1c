import type { SaveOutcome } from '../host.ts';
import { reasonOf } from './failure-reason.ts';

type Failed = Extract<SaveOutcome, { kind: 'failed' }>;

export function tooLargeToSave(name: string): Failed {
  const what = `The case was not saved to “${name}”: it is larger than 20 MB and could not be opened again`;
  return { kind: 'failed', sentence: `${what}. Your work is still open here. Remove routes or notes and save again.` };
}

/** `kept` is the name beside the file under which the whole work lies, or null where it got not that far. */
export function notSaved(name: string, kind: string, failure: unknown, kept: string | null): Failed {
  const { because, next } = reasonOf(failure);
  const work = kept === null ? 'still open here' : `kept beside it as “${kept}”`;
  const safe = `What was saved before is untouched, and your work is ${work}`;
  return { kind: 'failed', sentence: `The ${kind} could not be saved to “${name}”: ${because}. ${safe}. ${next}.` };
}
