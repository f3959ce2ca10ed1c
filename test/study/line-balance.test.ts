import { describe, expect, it } from 'vitest';
import { type LineBalance, lineBalance } from '../../src/index.ts';
import { demonstration } from '../examples/demonstration.ts';

const open = demonstration();
const lines = open.content.routes.flatMap((route) => route.lines.map((line) => ({ route: route.id, line: line.id })));
const balanceOf = (route: string, line: string): LineBalance => {
  const found = lineBalance(open, route, line);
  if (found === null) throw new Error(`No line ${route}.${line}`);
  return found;
};
const sumOf = (masses: readonly { readonly mass: number }[]): number => masses.reduce((sum, { mass }) => sum + mass, 0);

describe.each(lines)('the balance of $route, $line', ({ route, line }) => {
  const balance = balanceOf(route, line);

  it('begins with 1,000 kg fed and ends with the stock that the yield says', () => {
    expect(sumOf(balance.fed)).toBeCloseTo(1000, 8);
    // What is dissolved comes to the chest with the water and is no stock.
    const undissolved = balance.stock.filter(({ component }) => component !== 'dissolved');
    expect(sumOf(undissolved)).toBeCloseTo(1000 * balance.yield, 8);
    expect(sumOf(balance.stock) + balance.leavesTotal).toBeCloseTo(1000, 8);
  });

  it('closes at every stage: what enters is accepted or leaves, in sum and component by component', () => {
    let entering = balance.fed;
    for (const stage of balance.stages) {
      expect(stage.entersTotal, stage.id).toBeCloseTo(sumOf(entering), 8);
      expect(sumOf(stage.accepts) + stage.leavesTotal, stage.id).toBeCloseTo(stage.entersTotal, 8);
      if (stage.levels.length === 0 && stage.kind !== 'disperser')
        entering.forEach(({ component, mass }, place) => {
          const rest = (stage.accepts[place]?.mass ?? NaN) + (stage.leaves[place]?.mass ?? NaN);
          if (!changed.includes(component)) expect(rest, `${stage.id}, ${component}`).toBeCloseTo(mass, 8);
        });
      entering = stage.accepts;
    }
  });

  it('says where all that leaves a stage goes', () => {
    for (const stage of balance.stages) {
      expect(sumOf(stage.streams), stage.id).toBeCloseTo(stage.leavesTotal, 10);
      for (const { id, label } of stage.streams) expect(label, `${stage.id} to ${id}`).not.toBe('');
    }
  });

  it('names quantities of the graph that have the masses it shows', () => {
    const shown = [...balance.fed, ...balance.stages.flatMap((stage) => [...stage.accepts, ...stage.leaves])];
    expect(shown.filter(({ id }) => id !== '').length).toBeGreaterThan(10);
    for (const { id, mass } of shown)
      if (id === '') expect(mass).toBe(0);
      else expect(open.values.number(id) * 1000, id).toBeCloseTo(mass, 10);
  });

  it('adds the electricity of its stages up to that of the line', () => {
    const stages = balance.stages.reduce((sum, stage) => sum + stage.electricity, 0);

    expect(balance.electricityPerFeed * balance.feed).toBeCloseTo(stages, 10);
  });
});

/** Components that a stage may turn into one another: fibre is cut to fines, stickies are broken up. */
const changed: readonly string[] = [
  'fibre',
  'fines',
  'inkLarge',
  'inkMid',
  'inkSmall',
  'macroStickies',
  'microStickies',
  'wetStrength',
  'dissolved',
];

it('there is no balance of a line or a route that the case does not have', () => {
  expect(lineBalance(open, 'virgin', 'mixed')).toBeNull();
  expect(lineBalance(open, 'nowhere', 'mixed')).toBeNull();
});
