import type { Dice } from '../../support/dice.ts';

type Loose = Record<string, unknown> | unknown[];

/** Values that programs have fallen over. */
const awkward: readonly ((dice: Dice) => unknown)[] = [
  () => null,
  () => true,
  () => '',
  () => [],
  () => ({}),
  () => -1,
  () => 1e308,
  () => 0.1,
  () => Number.MAX_SAFE_INTEGER,
  (dice) => dice.pick(['__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty', 'valueOf', 'length']),
  (dice) =>
    dice.pick(['<img src=x onerror=alert(1)>', '${1+1}', '=1+1', '%s%s%n', '../../etc/passwd', 'CON', '\u202Egnp']),
  (dice) =>
    dice.pick(['NaN', 'Infinity', '1e999', '1e-999', '0x10', '1,5', '١٢', '--1', '1.2.3', '.', '-', ' 1', '1 ']),
  (dice) => 'a'.repeat(dice.whole(100, 50_000)),
  (dice) => '9'.repeat(dice.whole(30, 3000)),
  (dice) => '\u{1F4A9}'.repeat(dice.whole(1, 200)),
  (dice) => Array.from({ length: dice.whole(1, 300) }, () => 'a'),
  () => JSON.parse('{"__proto__": {"polluted": true}, "constructor": {"prototype": {"polluted": true}}}') as unknown,
];

function isLoose(value: unknown): value is Loose {
  return typeof value === 'object' && value !== null;
}

/** Every place in a tree: what holds it and under which name. */
function places(tree: unknown, found: { holder: Loose; key: string }[] = []): { holder: Loose; key: string }[] {
  if (!isLoose(tree)) return found;
  for (const key of Object.keys(tree)) {
    found.push({ holder: tree, key });
    places(Reflect.get(tree, key), found);
  }
  return found;
}

function put(holder: Loose, key: string, value: unknown): void {
  // A list has its own idea of its length, and JSON none.
  if (Array.isArray(holder) && key === 'length') return;
  Object.defineProperty(holder, key, { value, enumerable: true, configurable: true, writable: true });
}

function keyOf(value: unknown): string {
  return typeof value === 'string' ? value : JSON.stringify(value);
}

/** A case in which some values are others, gone, twice there, in each other's place, or under another name. */
export function spoiltStructure(dice: Dice, cases: readonly string[]): string {
  const content: unknown = JSON.parse(dice.pick(cases));
  for (let changes = dice.whole(1, 6); changes > 0; changes -= 1) {
    const all = places(content);
    const { holder, key } = dice.pick(all);
    const other = dice.pick(all);
    const value: unknown = Reflect.get(holder, key);
    dice.pick<() => unknown>([
      () => put(holder, key, dice.pick(awkward)(dice)),
      () => put(holder, key, dice.pick(awkward)(dice)),
      () => Reflect.deleteProperty(holder, key),
      () => put(holder, keyOf(dice.pick(awkward)(dice)), value),
      () => put(holder, key, structuredClone(Reflect.get(other.holder, other.key))),
      () => Array.isArray(holder) && holder.push(structuredClone(value)),
      () => Array.isArray(holder) && holder.reverse(),
    ])();
  }
  return JSON.stringify(content);
}

const figures = [
  '0',
  '-1',
  '1',
  '100',
  '99.999999',
  '1e40',
  '-1e40',
  '1e-40',
  '0.0000001',
  '123456789012345678901234567890',
];

/** A case of the right form whose figures are at or beyond their limits, so that the model itself is reached. */
export function spoiltFigures(dice: Dice, cases: readonly string[]): string {
  const content = JSON.parse(dice.pick(cases)) as { inputs: Record<string, { value: string; unit?: string }> };
  for (const id of dice.some(Object.keys(content.inputs), dice.between(0, 0.3))) {
    const given = content.inputs[id]!;
    const value = dice.chance(0.5) ? dice.pick(figures) : dice.digits(-200, 2000);
    content.inputs[id] = { ...given, value };
  }
  return JSON.stringify(content);
}
