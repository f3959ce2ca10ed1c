import * as v from 'valibot';
import { isCalendarDay } from './day.ts';

/** Text of one form, said in words: whatever is not of it, a number or a list too, is answered with these words. */
export const textLike = (pattern: RegExp, form: string) => v.pipe(v.string(form), v.regex(pattern, form));
export const text = (most: number) => v.pipe(v.string(), v.maxLength(most));
// "constructor" is the one such name that every JavaScript object already has.
export const id = textLike(
  /^(?!constructor$)[a-z][a-z0-9-]{0,39}$/,
  'a short name of small letters, digits and hyphens',
);
export const name = v.pipe(v.string(), v.minLength(1), v.maxLength(200));
export const reference = v.pipe(v.string(), v.minLength(1), v.maxLength(120));

// Exponents end at 30: beyond that ordinary floating-point numbers would in the end turn into infinity or nothing, and no figure of the
// trade comes near. Leading zeros are let through, since "007" can only mean 7; they are kept as written.
export const digits = textLike(
  /^(?=.{1,120}$)-?\d+(\.\d+)?([eE][+-]?0*([12]?\d|30))?$/,
  'a plain number written as text, such as "12.5", with at most 120 characters and an exponent from -30 to 30',
);
export const inputId = textLike(/^[A-Za-z0-9][A-Za-z0-9.-]{0,199}$/, 'an id of letters, digits, hyphens and dots');
export const unit = v.pipe(v.string(), v.minLength(1, 'a unit, "1" for a plain number'), v.maxLength(40));

export const wholeNumber = (least: number, most: number) => {
  const form = `a whole number from ${String(least)} to ${String(most)}`;
  return v.pipe(v.number(form), v.integer(form), v.minValue(least, form), v.maxValue(most, form));
};

export const day = textLike(/^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/, 'a day such as 2027-12-31');
/** The same, and there must be such a day. */
export const calendarDay = v.pipe(day, v.check(isCalendarDay, 'a day of the calendar such as 2027-12-31'));

/** A figure that a person gave. */
export const given = v.strictObject({
  value: digits,
  unit,
  status: v.optional(
    v.picklist(['measured', 'definition', 'read', 'derived', 'memory', 'practice', 'invented', 'none']),
  ),
  source: v.optional(text(500)),
  date: v.optional(calendarDay),
  boundary: v.optional(text(60)),
  year: v.optional(textLike(/^\d{4}$/, 'a year of four digits')),
  gwp: v.optional(v.picklist(['AR4', 'AR5', 'AR6', 'none'])),
  allocation: v.optional(v.picklist(['none', 'cut-off', 'closed loop', 'substitution'])),
});
