/** What is said to those who hear the page, once something has changed that they cannot see. */
export class Announcer {
  #text = $state.raw('');

  get text(): string {
    return this.#text;
  }

  say(sentence: string): void {
    // The same sentence twice would not be read out again.
    this.#text = sentence === this.#text ? `${sentence}\u00a0` : sentence;
  }
}
