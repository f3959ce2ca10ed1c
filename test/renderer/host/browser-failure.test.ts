import { expect, it } from 'vitest';
import { explainBrowserFailure } from '../../../renderer/host/browser-failure.ts';

const explain = (failure: unknown) =>
  explainBrowserFailure(failure, 'The case could not be saved', 'Your work is safe');

it('takes a closed picker for a choice', () => {
  expect(explain(new DOMException('The user aborted a request.', 'AbortError'))).toEqual({ kind: 'cancelled' });
});

it.each([
  [
    new DOMException('x', 'NotAllowedError'),
    'The case could not be saved: the browser was not given leave to use the file. Your work is safe. Try again and allow it.',
  ],
  [
    new DOMException('x', 'QuotaExceededError'),
    'The case could not be saved: the disk is full. Your work is safe. Make room, or choose another place with Save As.',
  ],
  [
    new Error('something inside'),
    'The case could not be saved. Your work is safe. Try again, or choose another place.',
  ],
  ['not even an error', 'The case could not be saved. Your work is safe. Try again, or choose another place.'],
])('makes a sentence of %s', (failure, sentence) => {
  expect(explain(failure)).toEqual({ kind: 'failed', sentence });
});
