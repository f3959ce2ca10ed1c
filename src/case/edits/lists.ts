/** A name that is not taken yet: "fine", then "fine-2", "fine-3". */
export function freshId(wanted: string, taken: readonly string[]): string {
  const stem = wanted.replace(/-\d+$/u, '').slice(0, 34);
  if (!taken.includes(stem)) return stem;
  let number = 2;
  while (taken.includes(`${stem}-${String(number)}`)) number += 1;
  return `${stem}-${String(number)}`;
}

/** "Mixed papers (copy)", within the 200 characters that a label may have. */
export function copyLabel(label: string): string {
  const mark = ' (copy)';
  return `${label.slice(0, 200 - mark.length)}${mark}`;
}

export function inserted<Item>(items: readonly Item[], at: number, item: Item): readonly Item[] {
  const place = Math.max(0, Math.min(at, items.length));
  return [...items.slice(0, place), item, ...items.slice(place)];
}

export function moved<Item extends { readonly id: string }>(
  items: readonly Item[],
  id: string,
  to: number,
): readonly Item[] {
  const item = items.find((each) => each.id === id);
  if (item === undefined) return items;
  const others = items.filter((each) => each !== item);
  return inserted(others, to, item);
}

export function idsOf(items: readonly { readonly id: string }[]): readonly string[] {
  return items.map((item) => item.id);
}
