import { readFileSync } from 'node:fs';

/** What the terminal program needs of its surroundings. */
export interface Console {
  readonly say: (text: string) => void;
  readonly complain: (text: string) => void;
  readonly locale: string;
  /** The day it is, "2026-11-25": ages of prices are told by it. */
  readonly today: string;
  /** Tells how far a long task has come, in place of what it told before; left out where nobody watches. */
  readonly progress?: (text: string) => void;
  /** Calls once when the person wants to stop; gives back how to stop listening. */
  readonly onStop?: (stop: () => void) => () => void;
}

/** The case, or what was asked of it, has problems: they are told in sentences. */
export class Refusal extends Error {
  readonly sentences: readonly string[];
  constructor(sentences: readonly string[]) {
    super(sentences.join('\n'));
    this.sentences = sentences;
  }
}

/** The command itself was used wrongly. */
export class WrongUse extends Error {}

export function readText(file: string): string {
  const bytes = readBytes(file);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new Refusal([`"${file}" is not a case: it is not text in UTF-8.`]);
  }
}

function readBytes(file: string): Uint8Array {
  try {
    return readFileSync(file);
  } catch (fault) {
    throw new Refusal([`"${file}" cannot be read: ${reasonOf(fault)}.`]);
  }
}

/** Why a file cannot be used, in words. */
export function reasonOf(fault: unknown): string {
  const code = typeof fault === 'object' && fault !== null && 'code' in fault ? String(fault.code) : '';
  return reasons[code] ?? 'the system refuses';
}

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file or folder',
  ENOTDIR: 'there is a file where a folder should be',
  EACCES: 'it is not allowed',
  EPERM: 'it is not allowed, or another program has it open',
  EBUSY: 'another program has it open',
  EROFS: 'its drive can only be read',
  EISDIR: 'it is a folder',
  ENOSPC: 'the disk is full',
  EDQUOT: 'your share of the disk is used up',
  EFBIG: 'the drive takes no file of this size',
};
