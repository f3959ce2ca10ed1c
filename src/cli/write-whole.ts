import {
  accessSync,
  closeSync,
  constants,
  fsyncSync,
  openSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from 'node:fs';
import { basename, dirname, join } from 'node:path';
import process from 'node:process';
import { Refusal, reasonOf } from './console.ts';

/** A file that is being written beside the one it will replace. */
export interface WholeFile {
  write(content: string | Uint8Array): void;
  /** Puts it in place; until then the old file is as it was. */
  finish(): void;
  /** Leaves everything as it was. */
  giveUp(): void;
}

/** Writes a file so that it is there whole or not at all. What goes wrong is told in a sentence, and the old file is left as it was. */
export function writeWhole(file: string, content: string | Uint8Array): void {
  const whole = beginWhole(file);
  try {
    whole.write(content);
    whole.finish();
  } finally {
    whole.giveUp();
  }
}

/** The same for a file that is written part by part. Whoever begins one finishes it or gives it up; after either, giving up does nothing. */
export function beginWhole(file: string): WholeFile {
  return told(file, () => {
    const { target, isPlain } = targetOf(file);
    if (!isPlain) return throughTo(file, openSync(target, 'w'));
    const beside = join(dirname(target), `.${basename(target)}.${String(process.pid)}.part`);
    return inPlaceOf(file, target, beside, openSync(beside, 'wx'));
  });
}

/** What a save really replaces: through a link, so that the link stays one. What is no plain file, such as a pipe, is written to as it is. */
function targetOf(file: string): { readonly target: string; readonly isPlain: boolean } {
  let target: string;
  try {
    target = realpathSync(file);
  } catch (fault) {
    if (fault instanceof Error && 'code' in fault && fault.code === 'ENOENT') return { target: file, isPlain: true };
    throw fault;
  }
  const found = statSync(target);
  // A rename would replace even a file that its owner has protected.
  accessSync(target, constants.W_OK);
  return { target, isPlain: found.isFile() };
}

function inPlaceOf(file: string, target: string, beside: string, opened: number): WholeFile {
  let isOpen = true;
  let isThere = true;
  const close = (): void => {
    if (isOpen) closeSync(opened);
    isOpen = false;
  };
  return {
    write: (content) => told(file, () => writeAll(opened, content)),
    finish: () =>
      told(file, () => {
        fsyncSync(opened);
        close();
        renameSync(beside, target);
        isThere = false;
      }),
    giveUp: () => {
      close();
      if (isThere) rmSync(beside, { force: true });
      isThere = false;
    },
  };
}

function throughTo(file: string, opened: number): WholeFile {
  let isOpen = true;
  const close = (): void => {
    if (isOpen) closeSync(opened);
    isOpen = false;
  };
  return { write: (content) => told(file, () => writeAll(opened, content)), finish: close, giveUp: close };
}

/** The system may take less than it is given. */
function writeAll(opened: number, content: string | Uint8Array): void {
  const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
  let written = 0;
  while (written < bytes.length) written += writeSync(opened, bytes, written);
}

function told<Value>(file: string, work: () => Value): Value {
  try {
    return work();
  } catch (fault) {
    if (fault instanceof Error && 'code' in fault)
      throw new Refusal([`"${file}" cannot be written: ${reasonOf(fault)}.`]);
    throw fault;
  }
}
