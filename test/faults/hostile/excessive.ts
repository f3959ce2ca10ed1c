import type { Dice } from '../../support/dice.ts';

/** Brackets in brackets, alone or inside a case. */
export function nestedDeeply(dice: Dice, cases: readonly string[]): string {
  const depth = dice.chance(0.1) ? dice.whole(10_000, 300_000) : dice.whole(10, 3000);
  const [open, close] = dice.pick([
    ['[', ']'],
    ['{"a":', '}'],
    ['{"inputs":', '}'],
  ]);
  const middle = dice.pick(['1', '', 'null']);
  const nest = open.repeat(depth) + middle + (dice.chance(0.8) ? close.repeat(depth) : '');
  if (dice.chance(0.4)) return nest;
  return dice.pick(cases).replace(/"title": "[^"]*"/u, () => `"title": ${nest}`);
}

/** A key that stands twice, of which a reader could take either. */
export function saidTwice(dice: Dice, cases: readonly string[]): string {
  const text = dice.pick(cases);
  const keys = [...text.matchAll(/"[a-zA-Z.-]+": ("[^"]*"|\{|\[)/gu)];
  const chosen = dice.pick(keys);
  const at = chosen.index;
  const key = /^"[^"]+"/u.exec(chosen[0])?.[0] ?? '""';
  return `${text.slice(0, at)}${key}: ${dice.pick(['1', '"x"', 'null', '{}'])}, ${text.slice(at)}`;
}

/** Far more values than any case has. */
export function manyValues(dice: Dice, cases: readonly string[]): string {
  const count = dice.whole(20_000, 500_000);
  const list = dice.pick([
    () => `[${'1,'.repeat(count)}1]`,
    () => `[${'[],'.repeat(count)}[]]`,
    () => `{${Array.from({ length: count }, (_, place) => `"k${String(place)}":1`).join(',')}}`,
  ])();
  if (dice.chance(0.3)) return list;
  return dice.pick(cases).replace(/"materials": \[/u, () => `"note": "", "more": ${list}, "materials": [`);
}

/** Megabytes of spaces, of one text, or of one number. */
export function veryLarge(dice: Dice, cases: readonly string[]): string {
  const size = dice.whole(1_000_000, 22_000_000);
  const text = dice.pick(cases);
  return dice.pick([
    () => text + ' '.repeat(size),
    () => text.replace(/"note": "[^"]*"/u, () => `"note": "${'n'.repeat(size)}"`),
    () => text.replace(/"value": "[^"]*"/u, () => `"value": "${'1'.repeat(size)}"`),
    () => text.replace(/"version": 1/u, () => `"version": ${'1'.repeat(size)}`),
    () => text.replace(/"title": "[^"]*"/u, () => `"title": "${'\\u0041'.repeat(size / 6)}"`),
  ])();
}
