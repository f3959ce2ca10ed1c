/** As many characters as the name of a sheet may have in every spreadsheet. */
const longest = 31;

/** Names for sheets: no character that is not allowed, none too long, none twice however capitalised. */
export class SheetNames {
  readonly #taken = new Set<string>();

  nameFor(wanted: string): string {
    const plain = wanted.replace(/[\\/?*[\]:'!\p{Cc}\s]+/gu, ' ').trim() || 'Sheet';
    for (let count = 1; ; count += 1) {
      const end = count === 1 ? '' : ` (${String(count)})`;
      const name = `${cut(plain, longest - end.length)}${end}`;
      if (this.#taken.has(name.toLowerCase())) continue;
      this.#taken.add(name.toLowerCase());
      return name;
    }
  }
}

/** Cut to so many UTF-16 units, which is what spreadsheets count, and never through a character. */
function cut(text: string, most: number): string {
  let kept = '';
  for (const character of text) {
    if (kept.length + character.length > most) break;
    kept += character;
  }
  return kept.trimEnd();
}
