/**
 * Reckons what an equation in numbers says, as a reader with a pocket calculator would: "(0.9 + 1,000 × 2) ÷ 3", "the lesser of 1 and 2",
 * "2 to the power of 3", "1 where 2 is above 0, else 3". Written apart from the program that writes them; anything else is an error.
 */
export function readEquation(text: string): number {
  const tokens = text.match(
    /\u2212?\d+(?:,\d{3})*(?:\.\d+)?|[()+\u2212\u00d7\u00f7]|, else|the lesser of|the greater of|to the power of|and|where|is above|\S+/gu,
  );
  const reader = new Reader(tokens ?? []);
  const value = reader.choice();
  reader.end();
  return value;
}

class Reader {
  readonly #tokens: readonly string[];
  #at = 0;

  constructor(tokens: readonly string[]) {
    this.#tokens = tokens;
  }

  /** "a where b is above c, else d", or a sum. */
  choice(): number {
    const above = this.#pair();
    if (!this.#takes('where')) return above;
    const value = this.#sum();
    this.#must('is above');
    const limit = this.#sum();
    this.#must(', else');
    const otherwise = this.#sum();
    return value > limit ? above : otherwise;
  }

  end(): void {
    if (this.#at < this.#tokens.length) throw new Error(`Nothing can follow here: "${this.#tokens[this.#at] ?? ''}"`);
  }

  #pair(): number {
    const lesser = this.#takes('the lesser of');
    if (!lesser && !this.#takes('the greater of')) return this.#sum();
    const left = this.#sum();
    this.#must('and');
    const right = this.#sum();
    return lesser ? Math.min(left, right) : Math.max(left, right);
  }

  #sum(): number {
    let value = this.#product();
    for (;;) {
      if (this.#takes('+')) value += this.#product();
      else if (this.#takes('\u2212')) value -= this.#product();
      else return value;
    }
  }

  #product(): number {
    let value = this.#power();
    for (;;) {
      if (this.#takes('\u00d7')) value *= this.#power();
      else if (this.#takes('\u00f7')) value /= this.#power();
      else return value;
    }
  }

  #power(): number {
    const base = this.#single();
    return this.#takes('to the power of') ? base ** this.#single() : base;
  }

  #single(): number {
    if (this.#takes('(')) {
      const value = this.choice();
      this.#must(')');
      return value;
    }
    const token = this.#tokens[this.#at] ?? 'the end';
    if (!/^\u2212?\d/u.test(token)) throw new Error(`Not a number: "${token}"`);
    this.#at += 1;
    return Number(token.replaceAll(',', '').replace('\u2212', '-'));
  }

  #takes(token: string): boolean {
    const found = this.#tokens[this.#at] === token;
    if (found) this.#at += 1;
    return found;
  }

  #must(token: string): void {
    if (!this.#takes(token)) throw new Error(`"${token}" is missing before "${this.#tokens[this.#at] ?? 'the end'}"`);
  }
}
