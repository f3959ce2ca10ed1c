import { describe, expect, it } from 'vitest';
import { cascadeGroups, layOutCascade } from '../../../renderer/screens/lines/cascade-layout.ts';
import { massOf } from '../../../renderer/screens/lines/turns.ts';
import type { StageBalance } from '../../../src/index.ts';
import { someLines } from './line-balances.ts';

const cascades = someLines().flatMap(({ name, balance }) =>
  balance.stages.flatMap((stage, place) =>
    stage.levels.length === 0
      ? []
      : [{ name: `${name}, ${stage.stage}`, stage, enters: balance.stages[place - 1]?.accepts ?? balance.fed }],
  ),
);

describe.each(cascades)('the cascade of $name', ({ stage, enters }) => {
  it('rejects at its last single stage exactly what leaves, and accepts the rest', () => {
    const groups = cascadeGroups(stage, enters).filter(({ name }) => name !== 'water');

    expect(groups.length).toBeGreaterThan(0);
    for (const { name, levels, enters: fed } of groups) {
      const leaves = stage.leaves.find(({ component }) => component === name)?.mass ?? Number.NaN;
      const product = levels
        .filter((_, place) => place === 0 || stage.levels[place]?.forward === true)
        .reduce((sum, { accepts }) => sum + accepts, 0);
      expect(levels.at(-1)?.rejects).toBeCloseTo(leaves, 9);
      expect(product + leaves).toBeCloseTo(fed, 9);
    }
  });

  it('feeds each single stage with what enters it and what comes back to it', () => {
    for (const { levels, enters: fed } of cascadeGroups(stage, enters)) {
      levels.forEach(({ feed }, place) => {
        const before = place === 0 ? fed : (levels[place - 1]?.rejects ?? 0);
        const back = stage.levels[place + 1]?.forward === false ? (levels[place + 1]?.accepts ?? 0) : 0;
        expect(feed).toBeCloseTo(before + back, 9);
      });
    }
  });

  it('shows the fibre first, and of what follows fibre or water only what is fed', () => {
    const groups = cascadeGroups(stage, enters);

    expect(groups[0]?.name).toBe('fibre');
    expect(groups[0]?.enters).toBe(massOf(enters, 'fibre'));
    expect(groups.every((group) => group.enters > 0)).toBe(true);
  });
});

describe('the boxes of a cascade', () => {
  const stageOf = (count: number): Pick<StageBalance, 'levels'> => ({
    levels: Array.from({ length: count }, (_, k) => ({
      number: k + 1,
      forward: false,
      fibreRejected: 0.2,
      volumeRejected: 0.1,
      rejectConsistency: 0.02,
      acceptConsistency: 0.01,
      groups: [],
    })),
  });

  it.each([1, 2, 3, 4, 5])('stand side by side, %d of them, inside the picture', (count) => {
    const layout = layOutCascade(stageOf(count), 640);

    expect(layout.boxes).toHaveLength(count);
    layout.boxes.forEach((box, place) => {
      const next = layout.boxes[place + 1];
      if (next !== undefined) expect(box.x + layout.box.width).toBeLessThan(next.x);
    });
    expect((layout.boxes.at(-1)?.x ?? 0) + layout.box.width).toBeLessThan(layout.width);
  });

  it('lead what goes back along ways that do not lie on one another', () => {
    const layout = layOutCascade(stageOf(5), 640);

    for (const number of [2, 3, 4]) expect(layout.backAt(number)).not.toBe(layout.backAt(number + 1));
    expect(Math.max(...[2, 3, 4, 5].map((number) => layout.backAt(number)))).toBeLessThan(layout.height);
  });
});
