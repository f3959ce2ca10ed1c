import { describe, expect, it } from 'vitest';
import { type LineBalance, type OpenCase, lineBalance, startCase } from '../../src/index.ts';
import { type Component, components } from '../../src/paper/components.ts';
import { stageEntries } from '../../src/paper/catalogue.ts';
import { workOut } from '../../src/study/open-case.ts';
import { valueOf } from '../examples/demonstration.ts';
import { smallCase } from '../support/small-case.ts';
import { five } from './five-stages.ts';

function balanceOf(open: OpenCase, route = 'mill', line = 'line'): LineBalance {
  const found = lineBalance(open, route, line);
  if (found === null) throw new Error(`No line "${line}" in route "${route}"`);
  return found;
}

const massIn = (masses: LineBalance['fed'], component?: Component): number =>
  masses
    .filter((each) => component === undefined || each.component === component)
    .reduce((sum, { mass }) => sum + mass, 0);

/** Kilograms that a stage turns into something else, less what it makes of others: its fractions times what the stage before gave on. */
function turnedAway(open: OpenCase, line: LineBalance, component: Component): number {
  const stages = open.content.routes
    .find(({ id }) => id === line.route)
    ?.lines.find(({ id }) => id === line.line)?.stages;
  return (stages ?? []).reduce((sum, { like, id }, place) => {
    const before = line.stages[place - 1]?.accepts ?? line.fed;
    const moves = stageEntries.get(like)?.transforms ?? [];
    const share = (from: string, to: string) =>
      open.values.number(`${line.route}.${line.line}.${id}.turns.${from}-${to}`);
    return moves.reduce((moved, { from, to }) => {
      const mass = massIn(before, from) * share(from, to);
      return moved + (from === component ? mass : 0) - (to === component ? mass : 0);
    }, sum);
  }, 0);
}

const deinking = valueOf(
  startCase({
    title: 'A deinking line',
    virgin: 'printing-virgin',
    recovered: 'printing',
    tonnesPerYear: '100000',
    currency: 'EUR',
    priceYear: '2024',
  }),
);

describe.each([
  { name: 'five stages with three cascades and twelve components', open: five, route: 'mill', line: 'line' },
  { name: 'seventeen stages for office paper', open: deinking, route: 'recovered', line: 'office' },
  { name: 'a virgin line', open: deinking, route: 'virgin', line: 'bhkp' },
])('the balance of $name', ({ open, route, line }) => {
  const balance = balanceOf(open, route, line);

  it('closes: 1,000 kg fed are stock and what leaves, to 1e-9', () => {
    expect(massIn(balance.fed)).toBeCloseTo(1000, 9);
    expect(Math.abs(massIn(balance.stock) + balance.leavesTotal - 1000)).toBeLessThan(1e-6);
    expect(Math.abs(open.values.number(`${route}.${line}.closure`))).toBeLessThan(1e-9 * balance.feed);
  });

  it('closes for every component, counting what stages turn into another one', () => {
    for (const component of components) {
      const left = balance.stages.reduce((sum, { leaves }) => sum + massIn(leaves, component), 0);
      const found = massIn(balance.stock, component) + left + turnedAway(open, balance, component);
      expect(found, component).toBeCloseTo(massIn(balance.fed, component), 8);
    }
  });

  it('closes at every stage: what enters is what goes on and what leaves', () => {
    for (const [at, stage] of balance.stages.entries()) {
      expect(massIn(stage.accepts) + stage.leavesTotal, stage.stage).toBeCloseTo(stage.entersTotal, 8);
      expect(stage.entersTotal).toBeCloseTo(massIn(balance.stages[at - 1]?.accepts ?? balance.fed), 8);
      expect(massIn(stage.leaves), stage.stage).toBeCloseTo(stage.leavesTotal, 9);
      expect(stage.streams.reduce((sum, { mass }) => sum + mass, 0)).toBeCloseTo(stage.leavesTotal, 8);
    }
  });

  it('yields stock without its dissolved matter', () => {
    expect(balance.yield).toBeCloseTo((massIn(balance.stock) - massIn(balance.stock, 'dissolved')) / 1000, 12);
  });

  it('points at the quantity behind every mass that there is', () => {
    for (const { id, mass } of balance.stages.flatMap(({ accepts, leaves }) => [...accepts, ...leaves])) {
      if (mass !== 0) expect(id).not.toBe('');
      if (id !== '') expect(open.values.number(id) * 1000).toBeCloseTo(mass, 12);
    }
  });

  it('sums the electricity of its stages per tonne fed', () => {
    const used = balance.stages.reduce((sum, { electricity }) => sum + electricity, 0);

    expect(balance.electricityPerFeed).toBeCloseTo(used / balance.feed, 10);
  });

  it('is the balance of a route whose water closes to 1e-9', () => {
    const through = open.values.number(`${route}.water.elsewhere`);

    expect(Math.abs(open.values.number(`${route}.water.closure`))).toBeLessThan(1e-9 * through);
  });
});

it('there is no balance of a line or a route that is not there', () => {
  expect(lineBalance(five, 'mill', 'nothing')).toBeNull();
  expect(lineBalance(five, 'nothing', 'line')).toBeNull();
});

it('the feed of a line of two grades is mixed by their shares', () => {
  const open = valueOf(
    workOut(
      smallCase({
        materials: [{ id: 'paper' }, { id: 'sacks', label: 'Sacks' }],
        stages: [{ id: 'slush', like: 'pumps' }],
        figures: {
          'material.paper.ash': '10 %',
          'material.sacks.ash': '30 %',
          'mill.line.grade.sacks.share': '25 %',
          'other.line.grade.sacks.share': '25 %',
        },
      }),
    ),
  );

  // 0.75 x 10 + 0.25 x 30 = 15 %.
  expect(massIn(balanceOf(open).fed, 'ash')).toBeCloseTo(150, 10);
});
