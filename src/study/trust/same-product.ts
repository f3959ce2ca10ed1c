import {
  type SameProductAnswer,
  type SameProductReply,
  isAbout,
  sameProductQuestions,
} from '../../case/same-product.ts';
import type { OpenCase } from '../open-case.ts';

/** One of the five questions, with what was answered; open where nobody did. */
export interface AskedQuestion extends Omit<SameProductAnswer, 'reply'> {
  readonly reply: SameProductReply | null;
}

/** Whether two routes make the same product, as far as anybody has said. */
export interface SameProductStand {
  readonly base: string;
  readonly with: string;
  readonly questions: readonly AskedQuestion[];
  /** How many of the five are neither yes nor no. */
  readonly open: number;
  readonly stand: 'confirmed' | 'not confirmed' | 'denied';
}

/** The five questions about the two routes that face each other, or about two others. */
export function sameProduct(
  { content }: Pick<OpenCase, 'content'>,
  { base, with: other }: { readonly base: string; readonly with: string } = content.compare,
): SameProductStand {
  const answers = (content.sameProduct ?? []).find((pair) => isAbout(pair, base, other))?.answers ?? [];
  const questions = sameProductQuestions.map(
    (question): AskedQuestion => answers.find((each) => each.question === question) ?? { question, reply: null },
  );
  const open = questions.filter(({ reply }) => reply === null || reply === 'not yet').length;
  const isDenied = questions.some(({ reply }) => reply === 'no');
  return {
    base,
    with: other,
    questions,
    open,
    stand: isDenied ? 'denied' : open === 0 ? 'confirmed' : 'not confirmed',
  };
}
