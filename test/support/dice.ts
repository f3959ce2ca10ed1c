import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** Random choices that one seed repeats exactly. */
export class Dice {
  readonly #stream: ReturnType<typeof xoroshiro128plus>;

  constructor(seed: number) {
    this.#stream = xoroshiro128plus(seed);
  }

  between(low: number, high: number): number {
    return low + (high - low) * uniformFloat64(this.#stream);
  }

  /** A number between the two, as digits that a person could have typed. */
  digits(low: number, high: number): string {
    return String(Number(this.between(low, high).toPrecision(6)));
  }

  whole(low: number, high: number): number {
    return uniformInt(this.#stream, low, high);
  }

  chance(share: number): boolean {
    return this.between(0, 1) < share;
  }

  pick<Item>(items: readonly Item[]): Item {
    return items[this.whole(0, items.length - 1)]!;
  }

  some<Item>(items: readonly Item[], share: number): Item[] {
    return items.filter(() => this.chance(share));
  }
}
