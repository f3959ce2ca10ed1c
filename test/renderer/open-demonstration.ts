import demonstration from '../../examples/demonstration.tonne?raw';
import { EngineDesk } from '../../renderer/engine/engine-desk.ts';
import type { Answers, QuestionName, Questions } from '../../renderer/engine/messages.ts';
import type { Spread } from '../../src/index.ts';

export { demonstration };

/** The engine without its worker: the same desk, answering in the same thread. */
export class EngineInThread {
  readonly #desk = new EngineDesk();

  async ask<Name extends QuestionName>(name: Name, question: Questions[Name]): Promise<Answers[Name]> {
    await Promise.resolve();
    return this.#desk.answer(name, question);
  }

  askNewest<Name extends QuestionName>(name: Name, question: Questions[Name]): Promise<Answers[Name] | null> {
    return this.ask(name, question);
  }
}

export function demonstrationSpread(): Spread {
  const answer = new EngineDesk().answer('open', { text: demonstration });
  if (answer.kind === 'refused') throw new Error(answer.sentences.join(' '));
  return answer.state.spread;
}
