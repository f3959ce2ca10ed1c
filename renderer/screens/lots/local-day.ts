/** The day as the calendar on the wall has it, "2026-09-30". */
export function localDay(now: Date): string {
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${String(now.getFullYear())}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
