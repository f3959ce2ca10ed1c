import { describe, expect, it } from 'vitest';
import { Folding } from '../../../renderer/session/folding.svelte.ts';
import { demonstrationSpread } from '../open-demonstration.ts';

const { groups } = demonstrationSpread();
const openIds = (folding: Folding) => groups.filter(({ id }) => folding.isOpen(id)).map(({ id }) => id);
const lines = (folding: Folding) =>
  groups.filter(({ id }) => folding.isOpen(id)).reduce((sum, { rows }) => sum + rows.length, 0);
const largest = [...groups].sort(
  (left, right) => Math.abs(right.difference.perTonne) - Math.abs(left.difference.perTonne),
)[0]?.id;

describe('the groups of the ledger', () => {
  it('are all open where there is room for every line', () => {
    const folding = new Folding();
    folding.arrange(groups, 1000);

    expect(openIds(folding)).toEqual(groups.map(({ id }) => id));
  });

  it.each([17, 20, 26, 34])('take no more than %i rows where that is the room', (rows) => {
    const folding = new Folding();
    folding.arrange(groups, rows);

    expect(groups.length + lines(folding)).toBeLessThanOrEqual(rows);
    expect(openIds(folding)).toContain(largest);
  });

  it('show the lines of the greatest difference even where they have to scroll', () => {
    const folding = new Folding();
    folding.arrange(groups, 3);

    expect(openIds(folding)).toEqual([largest]);
  });

  it('stay as a person has folded them', () => {
    const folding = new Folding();
    folding.arrange(groups, 1000);
    folding.toggle('fibre');
    folding.arrange(groups, 2000);

    expect(folding.isOpen('fibre')).toBe(false);
  });
});
