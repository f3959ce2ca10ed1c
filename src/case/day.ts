/** Whether a text such as "2026-02-29" is a day of the calendar; its form must have been checked before. */
export function isCalendarDay(text: string): boolean {
  const [year, month, day] = partsOf(text);
  const isLeap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  const longest = [31, isLeap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1] ?? 0;
  return day >= 1 && day <= longest;
}

/** A day as it is kept: "2026-03-05". */
export function dayText(year: number, month: number, day: number): string {
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${String(year)}-${two(month)}-${two(day)}`;
}

/** Year, month and day as numbers. */
export function partsOf(day: string): readonly [year: number, month: number, day: number] {
  const [year = NaN, month = NaN, date = NaN] = day.split('-').map(Number);
  return [year, month, date];
}

/** Whole months from one day to a later one; a month is full on the same day of the next. Negative where the other is earlier. */
export function monthsBetween(from: string, to: string): number {
  const [a, b] = from <= to ? [from, to] : [to, from];
  const [[firstYear, firstMonth, firstDay], [year, month, day]] = [partsOf(a), partsOf(b)];
  const whole = (year - firstYear) * 12 + month - firstMonth - (day < firstDay ? 1 : 0);
  return from <= to ? whole : -whole;
}

/** Whether more than so many months lie between two days. */
export function isLonger(from: string, to: string, months: number): boolean {
  const whole = monthsBetween(from, to);
  return whole > months || (whole === months && partsOf(from)[2] !== partsOf(to)[2]);
}
