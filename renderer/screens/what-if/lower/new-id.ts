// Ids of a case have at most 40 characters; room is left for a number behind.
const longest = 34;

/** A name of small letters, digits and hyphens made from a label, that is not taken yet: "pulp-price-at-414", then "pulp-price-at-414-2". */
export function newId(label: string, kind: string, taken: readonly string[]): string {
  const bare = label
    .normalize('NFKD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/gu, '-')
    .replaceAll(/^[^a-z]+|-+$/gu, '')
    .slice(0, longest)
    .replace(/-+$/u, '');
  // A JavaScript object already has a "constructor", so a case takes no such name.
  const stem = bare === '' || bare === 'constructor' ? kind : bare;
  if (!taken.includes(stem)) return stem;
  let number = 2;
  while (taken.includes(`${stem}-${number}`)) number += 1;
  return `${stem}-${number}`;
}
