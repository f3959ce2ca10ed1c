import type { SameProductAnswer, SameProductStand } from '../../../../src/index.ts';

type Asked = SameProductStand['questions'][number];
type Answer = Omit<SameProductAnswer, 'question'>;

/** The answer to a question once part of it has changed; words before any reply mean "not yet", and emptied words are left out. */
export function answerAfter(asked: Asked, change: Partial<Answer>): Answer {
  const { reply, note = '', by = '', on = '' } = { ...asked, ...change };
  return {
    reply: reply ?? 'not yet',
    ...(note === '' ? {} : { note }),
    ...(by === '' ? {} : { by }),
    ...(on === '' ? {} : { on }),
  };
}
