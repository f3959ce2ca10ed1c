import { EngineDesk } from './engine-desk.ts';
import type { Answered, Asked } from './messages.ts';
import { today } from './today.ts';

const desk = new EngineDesk(today);

addEventListener('message', (event: MessageEvent<Asked>) => {
  const { ticket, name, question } = event.data;
  let answered: Answered;
  try {
    answered = { ticket, answer: desk.answer(name, question) };
  } catch (fault) {
    // Doubtful input comes back as sentences; whatever is thrown is a fault of the program and is told as one.
    answered = { ticket, fault: fault instanceof Error ? fault.message : String(fault) };
  }
  postMessage(answered);
});
