type Answer = (request: Request) => Response | Promise<Response>;

/** Electron's `protocol`: the handler of each scheme. */
export class StandInProtocols {
  readonly #answers = new Map<string, Answer>();
  readonly #isReady: () => boolean;

  constructor(isReady: () => boolean) {
    this.#isReady = isReady;
  }

  /** The object that main imports. */
  readonly protocol = {
    registerSchemesAsPrivileged: (_schemes: unknown) => {
      if (this.#isReady()) throw new Error('Schemes were given privileges after ready.');
    },
    handle: (scheme: string, answer: Answer) => {
      if (!this.#isReady()) throw new Error('A scheme was handled before ready.');
      this.#answers.set(scheme, answer);
    },
  };

  /** Null for a scheme that nobody handles. */
  async answer(url: string, method: string): Promise<Response | null> {
    const answer = this.#answers.get(new URL(url).protocol.slice(0, -1));
    return answer === undefined ? null : answer(new Request(url, { method }));
  }
}
