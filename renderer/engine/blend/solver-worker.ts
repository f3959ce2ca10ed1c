import { givenBlend, leastCostBlend, openCase, priceLots } from '../../../src/index.ts';
import { highsSolver } from '../../../src/study/lots/blend/highs-solver.ts';
import type { BlendAnswered, BlendAsked, Blends } from './blend-messages.ts';

const solver = highsSolver();

addEventListener('message', (event: MessageEvent<BlendAsked>) => {
  void answer(event.data);
});

async function answer({ ticket, text, today }: BlendAsked): Promise<void> {
  let answered: BlendAnswered;
  try {
    answered = { ticket, found: await blendOf(text, today) };
  } catch (fault) {
    answered = { ticket, fault: fault instanceof Error ? fault.message : String(fault) };
  }
  postMessage(answered);
}

async function blendOf(text: string, today: string): Promise<Blends | null> {
  const opened = openCase(text);
  if (!opened.ok) throw new Error('A blend was asked of a case that cannot be opened.');
  const priced = priceLots(opened.value, today);
  if (priced === null) return null;
  const blend = opened.value.content.lots?.blend ?? {};
  return {
    cheapest: leastCostBlend(opened.value, priced, blend, await solver),
    given: givenBlend(opened.value, priced, blend),
  };
}
