/** A failure that is told in one sentence: whoever started the script can do something about it, so no stack is shown. */
export class SentenceError extends Error {}
