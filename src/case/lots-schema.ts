import * as v from 'valibot';
import { deliveries, lotFigures } from './lots.ts';
import { digits, id, name, textLike } from './schema-text.ts';

const day = textLike(/^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/, 'a day such as 2027-12-31');
const gradeCode = textLike(/^\d\.\d{2}\.\d{2}$/, 'the code of a grade such as 1.04.00');
const readings = v.pipe(v.array(digits), v.minLength(1, 'at least one reading'), v.maxLength(200));

const lot = v.strictObject({
  id,
  label: name,
  grade: v.optional(gradeCode),
  basis: v.picklist(['as received', 'air-dry', 'bone-dry']),
  settlement: v.picklist(['as weighed', 'dry basis', 'point for point']),
  delivery: v.picklist(deliveries),
  remedy: v.optional(v.picklist(['claim', 'downgrade', 'refuse'])),
  downgradeTo: v.optional(gradeCode),
  validUntil: v.optional(day),
  moisture: v.optional(readings),
  unusable: v.optional(readings),
  figures: v.strictObject(v.entriesFromList(lotFigures, v.optional(digits))),
});

const blend = v.strictObject({
  shares: v.optional(v.record(id, digits)),
  product: v.optional(digits),
  ash: v.optional(digits),
  macroStickies: v.optional(digits),
  moisture: v.optional(digits),
  grades: v.optional(v.record(gradeCode, v.strictObject({ least: v.optional(digits), most: v.optional(digits) }))),
});

/** What a file may hold of suppliers' lots. */
export const lotsSchema = v.strictObject({
  line: v.optional(v.strictObject({ route: id, line: id })),
  against: v.optional(v.picklist(['virgin line', 'best other lot', 'target cost'])),
  target: v.optional(digits),
  creditRate: v.optional(digits),
  offers: v.pipe(v.array(lot), v.maxLength(60)),
  blend: v.optional(blend),
});
