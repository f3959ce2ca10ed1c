import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Dice } from '../../support/dice.ts';
import { damagedBytes, otherEncoding, randomBytes, spliced, truncated } from './damaged.ts';
import { manyValues, nestedDeeply, saidTwice, veryLarge } from './excessive.ts';
import { grown } from './grown.ts';
import { spoiltFigures, spoiltStructure } from './spoilt.ts';

function casesIn(folder: string): string[] {
  const path = join(process.cwd(), folder);
  return readdirSync(path)
    .filter((name) => name.endsWith('.tonne'))
    .map((name) => readFileSync(join(path, name), 'utf8'));
}

const cases = ['examples', 'examples/stories', 'test/old-cases'].flatMap(casesIn);

/** Makes one kind of hostile file from cases that can be read. */
export type Spoil = (dice: Dice, cases: readonly string[]) => Uint8Array | string;

/** How often each kind is made, in thousandths. The costly ones are rare, and still come by the hundred. */
const kinds: readonly (readonly [string, number, Spoil])[] = [
  ['truncated', 150, truncated],
  ['damaged bytes', 150, damagedBytes],
  ['two files in one', 60, spliced],
  ['another encoding', 60, otherEncoding],
  ['random bytes', 60, randomBytes],
  ['spoilt structure', 340, spoiltStructure],
  ['spoilt figures', 56, spoiltFigures],
  ['said twice', 60, saidTwice],
  ['nested deeply', 50, nestedDeeply],
  ['grown', 4, grown],
  ['many values', 7, manyValues],
  ['very large', 3, veryLarge],
];

export function hostileFile(dice: Dice): { readonly kind: string; readonly bytes: Uint8Array } {
  const total = kinds.reduce((sum, [, share]) => sum + share, 0);
  let left = dice.whole(0, total - 1);
  const [kind, , spoil] = kinds.find(([, share]) => (left -= share) < 0)!;
  const made = spoil(dice, cases);
  return { kind, bytes: typeof made === 'string' ? new TextEncoder().encode(made) : made };
}
