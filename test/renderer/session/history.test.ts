import { describe, expect, it } from 'vitest';
import { History } from '../../../renderer/session/history.svelte.ts';

describe('the history of a case', () => {
  it('has nowhere to go at first', () => {
    const history = new History();

    expect(history.undo('now')).toBeNull();
    expect(history.redo('now')).toBeNull();
    expect(history.undoes).toBeNull();
  });

  it('goes back edit by edit, and forth again to where one was', () => {
    const history = new History();
    history.record('first', 'pulp price');
    history.record('second', 'moisture');

    expect(history.undoes).toBe('moisture');
    expect(history.undo('third')).toBe('second');
    expect(history.undoes).toBe('pulp price');
    expect(history.undo('second')).toBe('first');
    expect(history.undo('first')).toBeNull();
    expect(history.redo('first')).toBe('second');
    expect(history.redo('second')).toBe('third');
    expect(history.redo('third')).toBeNull();
  });

  it('forgets what was taken back once something else is changed', () => {
    const history = new History();
    history.record('first', 'pulp price');
    history.undo('second');
    history.record('first', 'moisture');

    expect(history.redoes).toBeNull();
    expect(history.undoes).toBe('moisture');
  });
});
