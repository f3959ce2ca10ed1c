/** Well below what a spreadsheet takes for a name, which is 255 characters (ECMA-376-1:2016, part 1, 18.2.5). */
const longest = 200;

/**
 * Names for cells, made of ids: letters, digits and underscores, none twice however capitalised. There is an underscore in each, so that
 * none can be taken for a cell ("CO2"), for a row and a column ("R1C1") or for a function.
 */
export class DefinedNames {
  readonly #taken = new Set<string>();

  nameFor(id: string): string {
    const plain = id.replace(/[^A-Za-z0-9]+/gu, '_').slice(0, longest);
    const begun = /^[A-Za-z]/u.test(plain) ? plain : `_${plain}`;
    const name = begun.includes('_') ? begun : `${begun}_`;
    for (let count = 1; ; count += 1) {
      const each = count === 1 ? name : `${name}_${String(count)}`;
      if (this.#taken.has(each.toLowerCase())) continue;
      this.#taken.add(each.toLowerCase());
      return each;
    }
  }
}
