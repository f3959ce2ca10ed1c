import { beforeEach, describe, expect, it } from 'vitest';
import { pathUnder, Working } from '../../../renderer/session/working.svelte.ts';
import { demonstration, EngineInThread } from '../open-demonstration.ts';

let working: Working;
const total = 'recovered.cost.total';

beforeEach(async () => {
  const engine = new EngineInThread();
  await engine.ask('open', { text: demonstration });
  working = new Working(engine, (fault) => {
    throw fault;
  });
});

describe('the slip', () => {
  it('shows a figure with what it is made of', async () => {
    await working.show(total);

    expect(working.explanation?.id).toBe(total);
    expect(working.explanation?.ingredients.length).toBeGreaterThan(0);
  });

  it('unfolds an ingredient in place, and folds it again', async () => {
    await working.show('difference.total');
    const path = pathUnder('difference.total', total);

    await working.toggle(path);
    expect(working.isUnfolded(path)).toBe(true);
    expect(working.of(total)?.ingredients.length).toBeGreaterThan(0);

    await working.toggle(path);
    expect(working.isUnfolded(path)).toBe(false);
  });

  it('follows a figure to what it goes into, and comes back', async () => {
    await working.show(total);
    await working.follow('difference.total');
    expect(working.id).toBe('difference.total');
    expect(working.previous?.id).toBe(total);

    await working.back();
    expect(working.id).toBe(total);
    expect(working.previous).toBeNull();
  });

  it('starts a fresh trail at a figure of the page', async () => {
    await working.show(total);
    await working.follow('difference.total');
    await working.show('virgin.cost.total');

    expect(working.previous).toBeNull();
  });
});
