import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { KeepOutcome } from '../../../electron/host.ts';
import { DraftKeeper } from '../../../renderer/session/draft-keeper.ts';

const failed: KeepOutcome = { kind: 'failed', sentence: 'The disk is full.' };

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

function keeper() {
  const kept: (string | null)[] = [];
  const told: string[] = [];
  const disk: { outcome: KeepOutcome } = { outcome: { kind: 'kept' } };
  const under = new DraftKeeper(
    (text) => {
      kept.push(text);
      return Promise.resolve(disk.outcome);
    },
    (sentence) => told.push(sentence),
  );
  return { under, kept, told, disk };
}

describe('keeping unsaved work', () => {
  it('goes to the machine within a quarter of a second after an edit', async () => {
    const { under, kept } = keeper();

    under.note('one', 'Mill');
    await vi.advanceTimersByTimeAsync(250);

    expect(kept).toEqual(['one']);
  });

  it('gathers quick edits, and is never put off by them', async () => {
    const { under, kept } = keeper();

    for (let edit = 1; edit <= 20; edit += 1) {
      under.note(String(edit), 'Mill');
      await vi.advanceTimersByTimeAsync(100);
    }
    await vi.advanceTimersByTimeAsync(250);

    // Twenty edits over two seconds: at most four a second, and the last one is among them.
    expect(kept.length).toBeGreaterThan(5);
    expect(kept.length).toBeLessThan(10);
    expect(kept.at(-1)).toBe('20');
  });

  it('takes nothing away that an earlier screen left', () => {
    const { under, kept } = keeper();

    under.note(null, 'Mill');

    expect(kept).toEqual([]);
  });

  it('is taken away at once when the work is saved, and what was still gathered is not kept after it', async () => {
    const { under, kept } = keeper();
    under.note('one', 'Mill');

    under.note(null, 'Mill');
    await vi.advanceTimersByTimeAsync(1000);

    expect(kept).toEqual([null]);
  });

  it('says once that it fails, and again only after it went well', async () => {
    const { under, told, disk } = keeper();
    const edit = async (text: string, outcome: KeepOutcome) => {
      disk.outcome = outcome;
      under.note(text, 'Mill');
      await vi.advanceTimersByTimeAsync(300);
    };

    await edit('one', failed);
    await edit('two', failed);
    expect(told).toEqual(['The disk is full.']);

    await edit('three', { kind: 'kept' });
    await edit('four', failed);
    expect(told).toHaveLength(2);
  });
});
