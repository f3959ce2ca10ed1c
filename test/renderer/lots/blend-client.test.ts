import { expect, test } from 'vitest';
import { BlendClient, type BlendWorker } from '../../../renderer/engine/blend/blend-client.ts';
import type { BlendAnswered, BlendAsked } from '../../../renderer/engine/blend/blend-messages.ts';

function fakeWorker() {
  const asked: BlendAsked[] = [];
  const state: { tell: (answered: BlendAnswered) => void; started: number; ended: number } = {
    tell: () => undefined,
    started: 0,
    ended: 0,
  };
  const start = (): BlendWorker => {
    state.started += 1;
    return {
      postMessage: (question) => void asked.push(question),
      terminate: () => void (state.ended += 1),
      addEventListener: (type: string, listener: unknown) => {
        if (type === 'message') state.tell = (data) => (listener as (event: { data: BlendAnswered }) => void)({ data });
      },
    };
  };
  return { asked, state, start };
}

test('no solver is started before a blend is asked for, and only one then', () => {
  const { state, start } = fakeWorker();
  const client = new BlendClient(start);
  expect(state.started).toBe(0);

  void client.find('one', '2026-09-30');
  void client.find('two', '2026-09-30');
  expect(state.started).toBe(1);

  client.dismiss();
  expect(state.ended).toBe(1);
});

test('an answer comes back to its question, and a fault as one', async () => {
  const { asked, state, start } = fakeWorker();
  const client = new BlendClient(start);

  const first = client.find('one', '2026-09-30');
  state.tell({ ticket: asked[0]!.ticket, found: { cheapest: { kind: 'no lots' }, given: null } });
  expect(await first).toEqual({ cheapest: { kind: 'no lots' }, given: null });

  const second = client.find('two', '2026-09-30');
  // A late answer to the first is not taken for one to the second.
  state.tell({ ticket: asked[0]!.ticket, found: null });
  state.tell({ ticket: asked[1]!.ticket, fault: 'out of memory' });
  await expect(second).rejects.toThrow('out of memory');
});
