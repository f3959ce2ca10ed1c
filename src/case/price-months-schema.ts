import * as v from 'valibot';
import { longestMonth, mostMonths } from './price-months.ts';
import { digits, inputId } from './schema-text.ts';

const month = v.pipe(v.string(), v.minLength(1), v.maxLength(longestMonth));

export const priceMonths = v.strictObject({
  pulp: inputId,
  recovered: inputId,
  points: v.pipe(
    v.array(v.strictObject({ month, pulp: digits, recovered: digits })),
    v.minLength(1, 'at least one month'),
    v.maxLength(mostMonths),
  ),
});
