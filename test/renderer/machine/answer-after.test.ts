import { expect, it } from 'vitest';
import { answerAfter } from '../../../renderer/screens/machine/same-product/answer-after.ts';

const open = { question: 'surface', reply: null } as const;
const said = { question: 'surface', reply: 'yes', note: 'Reels hold', by: 'R. Invented', on: '2026-11-03' } as const;

it('keeps what was said when the reply changes', () => {
  expect(answerAfter(said, { reply: 'no' })).toEqual({
    reply: 'no',
    note: 'Reels hold',
    by: 'R. Invented',
    on: '2026-11-03',
  });
});

it('takes words before any reply for "not yet", never for a yes', () => {
  expect(answerAfter(open, { note: 'Trial booked' })).toEqual({ reply: 'not yet', note: 'Trial booked' });
});

it('leaves out what was emptied', () => {
  expect(answerAfter(said, { by: '', on: '' })).toEqual({ reply: 'yes', note: 'Reels hold' });
});
