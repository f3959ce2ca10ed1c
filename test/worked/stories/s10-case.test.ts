import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type LineBalance, type OpenCase, editStructure, lineBalance, openCase } from '../../../src/index.ts';
import { valueOf } from '../../examples/demonstration.ts';

// The story of the third screen from its file, as anybody can open it: invented figures, worked by hand. Route "first" screens and then
// dispergers, route "last" the other way round. Shares are of the 10 kg of macro-stickies in 1,000 kg fed.
const open = valueOf(openCase(readFileSync(new URL('../../../examples/stories/s10.tonne', import.meta.url), 'utf8')));

function lineOf(from: OpenCase, route: string): LineBalance {
  const found = lineBalance(from, route, 'paper');
  if (found === null) throw new Error(`No line in route "${route}"`);
  return found;
}

function stickiesIn(from: OpenCase, route: string): { readonly macro: number; readonly micro: number } {
  const per = (component: string) =>
    10 * (lineOf(from, route).stock.find((each) => each.component === component)?.mass ?? NaN);
  return { macro: per('macroStickies'), micro: per('microStickies') };
}

const withScreens = (levels: number): OpenCase =>
  valueOf(
    editStructure(open, { kind: 'set up stage', route: 'first', line: 'paper', stage: 'screen', options: { levels } }),
  );

describe('screens that reject 20 % of the fibre each, quotient 0.9', () => {
  test.each([
    { levels: 1, fibre: '20.0000', removed: '71.43' },
    { levels: 2, fibre: '4.7619', removed: '64.10' },
    { levels: 3, fibre: '1.1765', removed: '61.58' },
    { levels: 4, fibre: '0.2933', removed: '60.62' },
  ])('$levels in a cascade lose $fibre % of the fibre and take $removed % of the macro-stickies', (row) => {
    const screen = lineOf(withScreens(row.levels), 'first').stages.find(({ stage }) => stage === 'screen');
    const left = (component: string) => screen?.leaves.find((each) => each.component === component)?.mass ?? NaN;

    expect(screen?.levels).toHaveLength(row.levels);
    expect(((100 * left('fibre')) / 990).toFixed(4)).toBe(row.fibre);
    expect(((100 * left('macroStickies')) / 10).toFixed(2)).toBe(row.removed);
  });
});

describe('the order of screens and disperger', () => {
  test('screens first leave 7.68 macro and 30.74 micro, 38.42 in all', () => {
    const { macro, micro } = stickiesIn(open, 'first');

    expect([macro.toFixed(2), micro.toFixed(2), (macro + micro).toFixed(2)]).toEqual(['7.68', '30.74', '38.42']);
  });

  test('the disperger first leaves 7.68 macro and 79.06 micro, 86.74 in all', () => {
    const { macro, micro } = stickiesIn(open, 'last');

    expect([macro.toFixed(2), micro.toFixed(2), (macro + micro).toFixed(2)]).toEqual(['7.68', '79.06', '86.74']);
  });

  test('shows in no measurement of macro-stickies, which are the same', () => {
    expect(stickiesIn(open, 'first').macro).toBeCloseTo(stickiesIn(open, 'last').macro, 12);
  });

  test('can be changed by moving the stage, which makes one route the other', () => {
    const moved = valueOf(
      editStructure(open, { kind: 'move stage', route: 'last', line: 'paper', stage: 'screen', to: 0 }),
    );

    expect(stickiesIn(moved, 'last')).toEqual(stickiesIn(open, 'first'));
    expect(moved.values.exact('last.cost.total')).toBe(open.values.exact('first.cost.total'));
  });

  test('hides stickies in the product that the screens would have paid to dispose of', () => {
    // 86.74 - 38.42 = 48.32 of 100 parts are sold as product instead of leaving as reject.
    const rejected = (route: string) => open.values.number(`${route}.residue.fine.dry`);

    expect(lineOf(open, 'last').yield).toBeGreaterThan(lineOf(open, 'first').yield);
    expect(rejected('last')).toBeLessThan(rejected('first'));
    expect(open.values.number('last.cost.residues.fine')).toBeLessThan(open.values.number('first.cost.residues.fine'));
  });
});

test('the disperger removes nothing, wherever it stands', () => {
  for (const route of ['first', 'last']) {
    const disperger = lineOf(open, route).stages.find(({ stage }) => stage === 'disperse');
    expect(disperger?.leavesTotal).toBe(0);
    expect(disperger?.streams).toEqual([]);
    expect(disperger?.electricity).toBeGreaterThan(0);
  }
});
