import * as v from 'valibot';
import { id, name, textLike, wholeNumber } from './schema-text.ts';

const year = wholeNumber(0, 30);

/** What a file may hold of an investment plan; its figures stand among the inputs. */
export const investmentPlan = v.strictObject({
  from: id,
  to: id,
  start: textLike(/^\d{4}$/, 'a year of four digits'),
  years: wholeNumber(1, 30),
  operatesFrom: wholeNumber(0, 10),
  money: v.picklist(['real', 'nominal']),
  estimateClass: v.optional(v.picklist(['1', '2', '3', '4', '5'])),
  items: v.pipe(v.array(v.strictObject({ id, label: name })), v.maxLength(40)),
  supports: v.optional(
    v.pipe(
      v.array(v.strictObject({ id, label: name, kind: v.picklist(['grant', 'credit']), first: year, last: year })),
      v.maxLength(20),
    ),
  ),
  outlets: v.optional(v.pipe(v.array(v.strictObject({ destination: id, first: year, last: year })), v.maxLength(60))),
  depreciation: v.picklist(['straight line', 'declining balance', 'table']),
  losses: v.picklist(['carried forward', 'at once']),
});
