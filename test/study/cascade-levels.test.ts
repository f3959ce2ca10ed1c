import { describe, expect, it } from 'vitest';
import { lineBalance } from '../../src/index.ts';
import { workOut } from '../../src/study/open-case.ts';
import { valueOf } from '../examples/demonstration.ts';
import { smallCase } from '../support/small-case.ts';

// By hand: r = 0.25, 0.3, 0.4 with feedback take gross feeds of 1.27131783, 0.38759690 and 0.11627907 and lose 4.651163 %. At R = 0.25,
// a quotient of 0.9 takes 0.25/(1 - 0.9 + 0.9 x 0.25) = 0.769231; thickened twice from 2 %, the reject has 4 % and the accept
// 2 (1 - 0.25)/(1 - 0.125) = 1.714286 %.
describe('the single stages of a cascade', () => {
  const open = valueOf(
    workOut(
      smallCase({
        stages: [{ id: 'screen', like: 'fine', levels: 3 }],
        figures: {
          'material.paper.macroStickies': '1 %',
          'material.paper.fines': '10 %',
          'mill.line.screen.rejectRate': '25 %',
          'mill.line.screen.level.2.rejectRate': '30 %',
          'mill.line.screen.level.3.rejectRate': '40 %',
          'mill.line.screen.thickening': '2 1',
          'mill.line.screen.consistency': '2 %',
          'mill.line.screen.quotient.macroStickies': '0.9 1',
        },
      }),
    ),
  );
  const [screen] = lineBalance(open, 'mill', 'line')?.stages ?? [];
  const levels = screen?.levels ?? [];
  const left = (component: string): number => screen?.leaves.find((each) => each.component === component)?.mass ?? NaN;
  const groupOf = (name: string) => levels.map((level) => level.groups.find((group) => group.name === name));

  it('are told one by one, and none behind the first gives to the product', () => {
    expect(levels.map(({ number, forward }) => [number, forward])).toEqual([
      [1, false],
      [2, false],
      [3, false],
    ]);
  });

  it('take the gross feeds worked by hand, and lose the share worked by hand', () => {
    expect(groupOf('fibre').map((group) => group?.feed.toFixed(8))).toEqual(['1.27131783', '0.38759690', '0.11627907']);
    expect((left('fibre') / 890).toFixed(8)).toBe('0.04651163');
  });

  it('reject fibre as given, water half as fast, stickies by their quotient', () => {
    expect(groupOf('fibre').map((group) => group?.rejected)).toEqual([0.25, 0.3, 0.4]);
    expect(groupOf('water').map((group) => group?.rejected)).toEqual([0.125, 0.15, 0.2]);
    expect(groupOf('macroStickies')[0]?.rejected.toFixed(6)).toBe('0.769231');
  });

  it('thicken the reject and thin the accept', () => {
    expect(levels[0]?.rejectConsistency).toBeCloseTo(0.04, 12);
    expect(levels[0]?.acceptConsistency.toFixed(8)).toBe('0.01714286');
  });

  it('agree with the whole: what the last rejects of its feed is what leaves', () => {
    for (const [name, component, fed] of [
      ['fibre', 'fibre', 890],
      ['water', 'fines', 100],
      ['macroStickies', 'macroStickies', 10],
    ] as const) {
      const last = groupOf(name).at(-1);
      const lost = (last?.feed ?? NaN) * (last?.rejected ?? NaN) * fed;
      expect(left(component), component).toBeCloseTo(lost, 9);
    }
  });
});
