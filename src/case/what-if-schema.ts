import * as v from 'valibot';
import { priceMonths } from './price-months-schema.ts';
import { day, digits, given, id, inputId, name, text, unit, wholeNumber } from './schema-text.ts';
import { distributionLaws } from './what-if.ts';

const range = v.strictObject({ low: digits, high: digits, source: v.optional(text(500)) });

const limit = v.strictObject({
  id,
  label: name,
  result: inputId,
  route: v.optional(id),
  sense: v.picklist(['at most', 'at least']),
  value: digits,
  unit,
  kind: v.picklist(['hard', 'soft']),
  source: v.optional(text(500)),
  from: v.optional(day),
  until: v.optional(day),
});

const scenario = v.strictObject({
  id,
  label: name,
  note: v.optional(text(1000)),
  inputs: v.record(inputId, given),
});

const distribution = v.strictObject({
  law: v.picklist(distributionLaws),
  low: v.optional(digits),
  mode: v.optional(digits),
  high: v.optional(digits),
  mean: v.optional(digits),
  deviation: v.optional(digits),
  values: v.optional(
    v.pipe(
      v.array(v.strictObject({ value: digits, weight: digits })),
      v.minLength(1, 'at least one value'),
      v.maxLength(50),
    ),
  ),
  drawn: v.optional(v.picklist(['once', 'yearly'])),
  persistence: v.optional(digits),
});

const correlation = v.strictObject({ one: inputId, other: inputId, value: digits });

/** What a file may hold of what-ifs. */
export const whatIfEntries = {
  ranges: v.optional(v.record(inputId, range)),
  limits: v.optional(v.pipe(v.array(limit), v.maxLength(60))),
  scenarios: v.optional(v.pipe(v.array(scenario), v.maxLength(40))),
  uncertainty: v.optional(
    v.strictObject({
      trials: wholeNumber(1_000, 1_000_000),
      seed: wholeNumber(0, 4_294_967_295),
      years: wholeNumber(1, 30),
      inputs: v.record(inputId, distribution),
      correlations: v.optional(v.pipe(v.array(correlation), v.maxLength(400))),
    }),
  ),
  months: v.optional(priceMonths),
};
