import { SentenceError } from './sentence-error.mjs';

/**
 * Runs a script's work; whatever goes wrong ends in a sentence and exit code 1, never in a stack trace.
 * @param {() => Promise<number | undefined>} work answers the exit code
 */
export async function tellFailures(work) {
  try {
    process.exitCode = (await work()) ?? 0;
  } catch (error) {
    const sentence = error instanceof Error ? error.message : String(error);
    console.error(error instanceof SentenceError ? sentence : `Something unexpected went wrong: ${sentence}`);
    process.exitCode = 1;
  }
}
