/** Lets messages that wait be taken in before work goes on. */
export class Turns {
  readonly #channel = new MessageChannel();
  readonly #waiting: (() => void)[] = [];

  constructor() {
    this.#channel.port1.addEventListener('message', () => this.#waiting.shift()?.());
    this.#channel.port1.start();
  }

  /** Comes back in the next turn. Several may wait at once, since a new run can begin before an older one hears that it is stopped. */
  lookUp(): Promise<void> {
    // A message to oneself stands behind those that wait already, and unlike a timer is not held back.
    return new Promise<void>((resolve) => {
      this.#waiting.push(resolve);
      this.#channel.port2.postMessage(null);
    });
  }

  end(): void {
    this.#channel.port1.close();
  }
}
