import * as v from 'valibot';
import { sameProductQuestions, sameProductReplies } from './same-product.ts';
import { calendarDay, digits, id, inputId, text, unit } from './schema-text.ts';

const answer = v.strictObject({
  question: v.picklist(sameProductQuestions),
  reply: v.picklist(sameProductReplies),
  note: v.optional(text(500)),
  by: v.optional(text(100)),
  on: v.optional(calendarDay),
});

const actual = v.strictObject({
  result: inputId,
  value: digits,
  unit,
  period: v.optional(text(100)),
  source: v.optional(text(500)),
});

/** What a file may hold of why its answer can be believed: whether the products are the same, and what was measured. */
export const trustEntries = {
  sameProduct: v.optional(
    v.pipe(
      v.array(
        v.strictObject({
          base: id,
          with: id,
          answers: v.pipe(v.array(answer), v.minLength(1, 'at least one answer'), v.maxLength(5)),
        }),
      ),
      v.maxLength(190),
    ),
  ),
  actuals: v.optional(v.pipe(v.array(actual), v.maxLength(400))),
};
