import type { Dice } from '../../support/dice.ts';

const encode = (text: string): Uint8Array => new TextEncoder().encode(text);

/** Cut off anywhere, also within a letter of several bytes. */
export function truncated(dice: Dice, cases: readonly string[]): Uint8Array {
  const bytes = encode(dice.pick(cases));
  return bytes.slice(0, dice.whole(0, bytes.length));
}

/** Some bytes are others, as a bad disk or transfer leaves them. */
export function damagedBytes(dice: Dice, cases: readonly string[]): Uint8Array {
  const bytes = encode(dice.pick(cases));
  const run = dice.chance(0.2) ? dice.whole(1, 4096) : 1;
  for (let hits = dice.whole(1, 20); hits > 0; hits -= 1) {
    const at = dice.whole(0, bytes.length - 1);
    // A run of zeros or spaces is what a power cut leaves of a file.
    if (run > 1) bytes.fill(dice.pick([0, 32]), at, at + run);
    else bytes[at] = dice.whole(0, 255);
  }
  return bytes;
}

export function spliced(dice: Dice, cases: readonly string[]): string {
  const one = dice.pick(cases);
  const other = dice.pick(cases);
  return one.slice(0, dice.whole(0, one.length)) + other.slice(dice.whole(0, other.length));
}

/** The same text in an encoding that is not ours, or with marks within it. */
export function otherEncoding(dice: Dice, cases: readonly string[]): Uint8Array | string {
  const text = dice.pick(cases);
  const at = dice.whole(0, text.length);
  const inserted = dice.pick(['\u0000', '\uFEFF', '\uFFFE', '\uD800', '\u2028', '\u202E', '\u0085']);
  return dice.pick<() => Uint8Array | string>([
    () => Buffer.from(text, 'utf16le'),
    () => Buffer.concat([Buffer.from([0xff, 0xfe]), Buffer.from(text, 'utf16le')]),
    () => Buffer.from(text, 'latin1'),
    () => `\uFEFF${text}`,
    () => `\uFEFF\uFEFF${text}`,
    () => text.replaceAll('\n', '\r'),
    () => text.slice(0, at) + inserted + text.slice(at),
  ])();
}

export function randomBytes(dice: Dice): Uint8Array {
  return Uint8Array.from({ length: dice.whole(0, 400) }, () => dice.whole(0, 255));
}
