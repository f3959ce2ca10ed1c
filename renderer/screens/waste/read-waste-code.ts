/** A waste code as somebody types it, in the form of the list: "030310" and "03-03-10 *" are "03 03 10" and "03 03 10*". Other text stays. */
export function readWasteCode(typed: string): string {
  const text = typed.trim();
  const match = /^(\d{2})[\s.-]*(\d{2})[\s.-]*(\d{2})\s*(\*?)$/u.exec(text);
  if (match === null) return text;
  const [, chapter = '', group = '', entry = '', hazard = ''] = match;
  return `${chapter} ${group} ${entry}${hazard}`;
}
