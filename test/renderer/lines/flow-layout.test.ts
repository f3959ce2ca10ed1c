import { describe, expect, it } from 'vitest';
import { type FlowLayout, layOutFlow } from '../../../renderer/screens/lines/flow-layout.ts';
import { leavesShown } from '../../../renderer/screens/lines/leaves-shown.ts';
import { sizeFor } from '../../../renderer/screens/lines/train-columns.ts';
import { massOf } from '../../../renderer/screens/lines/turns.ts';
import { someLines } from './line-balances.ts';

const column = 120;
const lines = someLines();
const laidOut = lines.map((line) => ({
  ...line,
  layout: layOutFlow(line.balance, line.inputs, sizeFor(column, 1366)),
}));
const widthAt = (layout: FlowLayout, component: string, x: number): number => {
  const points = layout.lanes.find((lane) => lane.component === component)?.points ?? [];
  return points.filter((point) => point.x <= x).at(-1)?.width ?? 0;
};

it('is tried on trains of 4 to 17 stages', () => {
  const lengths = lines.map(({ balance }) => balance.stages.length);

  expect(Math.min(...lengths)).toBe(4);
  expect(Math.max(...lengths)).toBe(17);
});

describe.each(laidOut)('the picture of $name', ({ balance, layout }) => {
  it('draws every component as wide as its mass, between every two stages and at both ends', () => {
    for (const { component, group } of layout.lanes) {
      const scale = layout.scale[group];
      expect(widthAt(layout, component, 0)).toBeCloseTo(massOf(balance.fed, component) * scale, 9);
      balance.stages.forEach((stage, place) => {
        const drawn = widthAt(layout, component, column * (place + 1) - 1);
        expect(drawn).toBeCloseTo(massOf(stage.accepts, component) * scale, 9);
      });
    }
  });

  it('leaves out no component that there is', () => {
    const drawn = layout.lanes.map(({ component }) => component);
    const present = balance.fed.filter(
      ({ component, mass }) => mass > 0 || balance.stages.some(({ accepts }) => massOf(accepts, component) > 0),
    );

    expect([...drawn].sort()).toEqual(present.map(({ component }) => component).sort());
  });

  it('never lets one lane lie on another', () => {
    layout.lanes.forEach((lane, place) => {
      const widest = Math.max(...lane.points.map(({ width }) => width));
      expect(widest).toBeLessThanOrEqual(lane.height + 1e-9);
      const next = layout.lanes[place + 1];
      if (next !== undefined) expect(lane.top + lane.height).toBeLessThanOrEqual(next.top);
    });
  });

  it('bends down what the table says leaves, each stream inside its stage and beside the one before', () => {
    for (const ribbon of layout.leaving) {
      const stage = balance.stages[ribbon.stage];
      const listed = leavesShown(stage?.leaves ?? [], true).find(({ component }) => component === ribbon.component);
      expect(listed?.mass).toBe(ribbon.mass);
      const { group } = layout.lanes.find(({ component }) => component === ribbon.component) ?? { group: 'bulk' };
      expect(ribbon.width).toBeCloseTo(ribbon.mass * layout.scale[group], 9);
      expect(ribbon.from.x).toBeGreaterThan(column * ribbon.stage);
      expect(ribbon.to.x).toBeLessThan(column * (ribbon.stage + 1));
      expect(ribbon.to.y + ribbon.width).toBeLessThanOrEqual(layout.height);
      const following = layout.leaving[layout.leaving.indexOf(ribbon) + 1];
      if (following?.stage === ribbon.stage) expect(following.to.y).toBeCloseTo(ribbon.to.y + ribbon.width, 9);
    }
  });

  it('takes what turns from one lane and gives as much to another, so that nothing is lost', () => {
    let enters = balance.fed;
    balance.stages.forEach((stage, place) => {
      const turning = layout.turning.filter((ribbon) => ribbon.stage === place);
      for (const { component } of layout.lanes) {
        const change = massOf(stage.accepts, component) + massOf(stage.leaves, component) - massOf(enters, component);
        const gives = turning.some((ribbon) => ribbon.component === component);
        // A component that both takes and gives, as ink of middle size, can change either way.
        if (change < -0.06) expect(gives).toBe(true);
      }
      enters = stage.accepts;
    });
  });
});

it('lets nothing leave at a disperser: ink and stickies only get smaller', () => {
  const withDisperser = laidOut.flatMap(({ balance, layout }) =>
    balance.stages.flatMap((stage, place) => (stage.kind === 'disperser' ? [{ stage, place, layout }] : [])),
  );

  expect(withDisperser.length).toBeGreaterThan(0);
  for (const { stage, place, layout } of withDisperser) {
    expect(layout.leaving.filter((ribbon) => ribbon.stage === place)).toEqual([]);
    expect(stage.leavesTotal).toBe(0);
    expect(layout.turning.filter((ribbon) => ribbon.stage === place).map(({ component }) => component)).toContain(
      'inkLarge',
    );
  }
});

it('prints a round number for how much larger dirt is drawn', () => {
  for (const { layout } of laidOut) {
    expect(layout.scale.dirt).toBeCloseTo(layout.scale.bulk * layout.scale.factor, 9);
    expect(Number(layout.scale.factor.toPrecision(2))).toBe(layout.scale.factor);
  }
});
