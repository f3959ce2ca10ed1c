import { diskFileSystem, type FileSystem } from '../../../electron/files/file-system.ts';
import { readCase as readFile } from '../../../electron/files/read-case.ts';
import { caseText } from '../../../src/study/case-text.ts';
import { openCase } from '../../../src/study/open-case.ts';
import { problemSentence } from '../../../src/wording/problem-sentence.ts';

/** A disk that holds just this file. */
function diskWith(bytes: Uint8Array): FileSystem {
  const facts = { size: bytes.byteLength, mode: 0o600, mtimeMs: 0, isFile: () => true };
  return { ...diskFileSystem, stat: () => Promise.resolve(facts), readFile: () => Promise.resolve(bytes) };
}

/** `fault` says what the program did that it must not do; null when it did all as it should. */
interface Reading {
  readonly outcome: 'refused' | 'opened' | 'crashed';
  readonly fault: string | null;
  /** Of the processor, until the program has its answer: a busy machine does not lengthen it. */
  readonly milliseconds: number;
}

/** Reads a file the way the program does: from the disk, then as a case, then worked out; every refusal in words. */
export async function readAsProgram(bytes: Uint8Array): Promise<Reading> {
  const before = process.cpuUsage();
  const since = (): number => {
    const { user, system } = process.cpuUsage(before);
    return Math.round((user + system) / 1000);
  };
  try {
    const read = await readFile('hostile.tonne', diskWith(bytes));
    if (read.kind === 'failed') {
      const fault = refusalFault([read.sentence]);
      return { outcome: 'refused', fault, milliseconds: since() };
    }
    const opened = openCase(read.text);
    const sentences = opened.ok ? [] : opened.problems.map(problemSentence);
    const milliseconds = since();
    const fault = opened.ok ? openedFault(caseText(opened.value)) : refusalFault(sentences);
    return { outcome: opened.ok ? 'opened' : 'refused', fault: fault ?? pollution(), milliseconds };
  } catch (crash) {
    const fault = crash instanceof Error ? (crash.stack ?? crash.message) : String(crash);
    return { outcome: 'crashed', fault, milliseconds: since() };
  }
}

/** What was opened must be written so that it reads as the same again. */
function openedFault(text: string): string | null {
  const again = openCase(text);
  if (!again.ok) return `what it writes cannot be read: ${again.problems.map(problemSentence).join(' ').slice(0, 300)}`;
  return caseText(again.value) === text ? null : 'what it writes reads as something else';
}

function refusalFault(sentences: readonly string[]): string | null {
  const poor = sentences.find((sentence) => !/\S \S/u.test(sentence) || /\[object|undefined/u.test(sentence));
  return poor === undefined ? null : `a refusal that says nothing: ${poor.slice(0, 300)}`;
}

/** A file that reaches into the language itself would change every object. */
function pollution(): string | null {
  const strange = Object.keys(Object.prototype).concat(Object.keys(Array.prototype));
  return strange.length === 0 ? null : `every object now has ${strange.join(', ')}`;
}
