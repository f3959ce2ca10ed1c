export type NumberReading =
  | { readonly kind: 'number'; readonly digits: string }
  /** Both readings are possible, as plain digits: with the mark as decimal mark, and as grouping. */
  | { readonly kind: 'either'; readonly decimal: string; readonly grouped: string }
  | { readonly kind: 'unreadable' };

const unreadable: NumberReading = { kind: 'unreadable' };
const groupedBySpaces = /^\d{1,3}([\s'’]\d{3})+(?=$|[.,])/u;
// In threes; or in twos before the last three, as in India.
const groupedByMarks = /^(?:\d{1,3}([.,])\d{3}(?:\1\d{3})*|\d{1,2}(?:,\d{2})+,\d{3})$/u;

/**
 * Reads an unsigned number typed with point or comma. The person's own decimal mark is taken as such; the other mark is taken as
 * what it can only be, and where it could be either, both readings come back: "1,234" in a locale that writes 1.5 is asked about.
 */
export function readNumber(typed: string, decimalMark: string): NumberReading {
  const text = groupedBySpaces.test(typed) ? typed.replace(/[\s'’]/gu, '') : typed;
  if (!/^[\d.,]*\d[\d.,]*$/u.test(text)) return unreadable;
  const marks = text.replace(/\d/gu, '');
  if (marks === '') return plain(text);
  const last = marks.at(-1) ?? '';
  const isMixed = marks.includes('.') && marks.includes(',');
  if (isMixed) return mixed(text, last);
  if (marks.length > 1) return groupedByMarks.test(text) ? plain(ungrouped(text)) : unreadable;
  const decimal = text.replace(last, '.');
  const canBeGrouping = groupedByMarks.test(text) && !text.startsWith('0');
  if (last === decimalMark || !canBeGrouping) return plain(decimal);
  return { kind: 'either', decimal, grouped: ungrouped(text) };
}

/** Two marks: the last one is the decimal mark and stands once, the other one groups. */
function mixed(text: string, decimalMark: string): NumberReading {
  const at = text.indexOf(decimalMark);
  const whole = text.slice(0, at);
  const fraction = text.slice(at + 1);
  if (fraction.includes(decimalMark) || !groupedByMarks.test(whole)) return unreadable;
  return plain(`${ungrouped(whole)}.${fraction}`);
}

function ungrouped(text: string): string {
  return text.replace(/[.,]/gu, '');
}

/** ".5" and "5." are written out, so that whoever reads on meets one form only. */
function plain(text: string): NumberReading {
  return { kind: 'number', digits: text.replace(/^\./u, '0.').replace(/\.$/u, '') };
}
