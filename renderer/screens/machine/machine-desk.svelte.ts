import { createContext } from 'svelte';
import type { MachineAnswer } from '../../engine/messages.ts';
import type { Book } from '../../session/book.svelte.ts';

/** The switch of what limits the machine, which is an input of the case. */
const soldOutId = 'machine.soldOut';

/** What the page of the machine effect shows, asked anew after every edit; an older answer stays until a newer one comes. */
export class MachineDesk {
  readonly #book: Book;
  #answer = $state.raw<MachineAnswer | null>(null);
  #refusal = $state.raw<readonly string[]>([]);

  constructor(book: Book) {
    this.#book = book;
  }

  get answer(): MachineAnswer | null {
    return this.#answer;
  }

  /** Why the last throw of the switch was refused. */
  get refusal(): readonly string[] {
    return this.#refusal;
  }

  async refresh(): Promise<void> {
    const answer = await this.#book.session.machine();
    if (answer !== null) this.#answer = answer;
  }

  /** Throws the switch; it stands in the case, and goes back like every other edit. */
  async limitBy(view: MachineAnswer['effect']['inForce']): Promise<void> {
    if (view === this.#answer?.effect.inForce) return;
    this.#refusal = await this.#book.session.change(soldOutId, view === 'soldOut' ? '1' : '0');
  }
}

export const [useMachineDesk, provideMachineDesk] = createContext<MachineDesk>();
