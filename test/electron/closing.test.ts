import { describe, expect, it } from 'vitest';
import { type CloseAnswer, Closing } from '../../electron/closing.ts';

function closing(...answers: CloseAnswer[]) {
  const seen: string[] = [];
  const clock = { now: 0 };
  const under = new Closing({
    ask: () => {
      seen.push('asked');
      return Promise.resolve(answers.shift() ?? 'stay');
    },
    requestSave: () => seen.push('save requested'),
    destroy: () => {
      seen.push('closed');
      return Promise.resolve();
    },
    now: () => clock.now,
  });
  const close = async () => {
    let held = false;
    under.onClose({ preventDefault: () => (held = true) });
    await new Promise(setImmediate);
    return held;
  };
  return { under, seen, clock, close };
}

const saved = () => Promise.resolve({ kind: 'saved' });

describe('closing a window', () => {
  it('asks nothing when nothing is unsaved', async () => {
    const { close, seen } = closing();

    expect(await close()).toBe(false);
    expect(seen).toEqual([]);
  });

  it('asks again nothing once the edits are saved', async () => {
    const { under, close } = closing();
    under.setEdited(true);
    under.setEdited(false);

    expect(await close()).toBe(false);
  });

  it('closes without saving when told to', async () => {
    const { under, seen, close } = closing('discard');
    under.setEdited(true);

    expect(await close()).toBe(true);
    expect(seen).toEqual(['asked', 'closed']);
  });

  it('stays when the question is cancelled', async () => {
    const { under, seen, close } = closing('stay');
    under.setEdited(true);

    expect(await close()).toBe(true);
    expect(seen).toEqual(['asked']);
  });

  it('asks once however often it is told to close meanwhile', async () => {
    const { under, seen } = closing('stay', 'stay');
    under.setEdited(true);

    under.onClose({ preventDefault: () => undefined });
    under.onClose({ preventDefault: () => undefined });
    await new Promise(setImmediate);

    expect(seen).toEqual(['asked']);
  });

  it('lets the screen save and closes when the work is on the disk', async () => {
    const { under, seen, close } = closing('save');
    under.setEdited(true);
    await close();

    await under.afterSave(saved);

    expect(seen).toEqual(['asked', 'save requested', 'closed']);
  });

  it.each(['failed', 'cancelled'])(
    'stays open when the save %s, and after a later save of the person',
    async (kind) => {
      const { under, seen, close } = closing('save');
      under.setEdited(true);
      await close();

      await under.afterSave(() => Promise.resolve({ kind }));
      await under.afterSave(saved);

      expect(seen).toEqual(['asked', 'save requested']);
    },
  );

  it('does not take a much later save for the one it asked for', async () => {
    const { under, seen, clock, close } = closing('save');
    under.setEdited(true);
    await close();
    clock.now = 5001;

    await under.afterSave(saved);

    expect(seen).not.toContain('closed');
  });
});
