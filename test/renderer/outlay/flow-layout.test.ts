import { describe, expect, it } from 'vitest';
import { layOutFlows, type FlowLayout } from '../../../renderer/screens/outlay/flow-layout.ts';
import { columnWidth, namesWidth } from '../../../renderer/screens/outlay/column-width.ts';
import { planScale } from '../../../renderer/screens/outlay/plan-scale.ts';
import { yearRows } from '../../../renderer/screens/outlay/year-rows.ts';
import { madeUp, planCase } from './plan-case.ts';

const { results } = planCase().answer;
const laidOut = (made = results, size = { column: 44, height: 200 }): FlowLayout => {
  const layout = layOutFlows(made, 1e6, size);
  if (layout === null) throw new Error('There is no picture.');
  return layout;
};

describe('the picture of the flows', () => {
  it('stands every bar over the middle of its column', () => {
    for (const { year, x, width } of laidOut().bars) expect(x + width / 2).toBeCloseTo((year + 0.5) * 44, 9);
  });

  it('hangs money out under the ground line and stands money in on it', () => {
    const { bars, ground } = laidOut();
    expect(bars[0]?.isOut).toBe(true);
    expect(bars[0]?.y).toBeCloseTo(ground, 9);
    const paying = bars[4];
    expect(paying?.isOut).toBe(false);
    expect((paying?.y ?? NaN) + (paying?.height ?? NaN)).toBeCloseTo(ground, 9);
  });

  it('draws bars in proportion: 34.916 million out is 34.916/9.114 times as long as 9.114 million in', () => {
    const { bars } = laidOut();
    expect((bars[0]?.height ?? NaN) / (bars[4]?.height ?? NaN)).toBeCloseTo(
      (results.flows[0] ?? NaN) / -(results.flows[4] ?? NaN),
      6,
    );
  });

  it('puts the ring where the line of the running sum crosses the ground', () => {
    const { sum, paidBack, ground } = laidOut();
    const [before, after] = [sum[5], sum[6]];
    if (before === undefined || after === undefined) throw new Error('The sum is too short.');
    // Straight between the dots of years 5 and 6.
    const share = (before.y - ground) / (before.y - after.y);
    expect(paidBack?.x).toBeCloseTo(before.x + share * (after.x - before.x), 6);
    expect(paidBack?.y).toBe(ground);
  });

  it('has no ring for a sum that never turns, nor for one that is never below nothing', () => {
    expect(laidOut(madeUp([-40e6, 5e6, 5e6])).paidBack).toBeNull();
    expect(laidOut(madeUp([4e6, 5e6], { payback: 0 })).paidBack).toBeNull();
  });

  it('keeps everything inside its height', () => {
    const { sum, discounted, bars, ends, paidBack, discountedBack } = laidOut();
    const heights = [
      ...sum.map(({ y }) => y),
      ...discounted.map(({ y }) => y),
      ...bars.flatMap(({ y, height }) => [y, y + height]),
      ends.sum,
      ends.discounted,
      paidBack?.label.y ?? NaN,
      discountedBack?.label.y ?? NaN,
    ];
    expect(Math.min(...heights)).toBeGreaterThan(0);
    expect(Math.max(...heights)).toBeLessThan(200);
  });

  it('keeps its labels inside where the ground lies at the foot', () => {
    const high = madeUp([-1e6, 90e6, 90e6, 90e6], { payback: 1.1, discountedPayback: 1.2 });
    const { ground, discountedBack } = laidOut(high, { column: 60, height: 120 });
    expect(ground).toBeGreaterThan(100);
    expect(discountedBack?.label.y).toBeLessThan(120);
  });

  it('turns a label round where it would leave the picture', () => {
    const soon = madeUp([-1e6, 9e6, 9e6, 9e6], { payback: 0.11, discountedPayback: 2.9 });
    const { paidBack, discountedBack } = laidOut(soon, { column: 60, height: 200 });
    expect(paidBack?.label.anchor).toBe('start');
    expect(discountedBack?.label.anchor).toBe('end');
  });

  it('counts the ring from the first year in which money flows', () => {
    const later = madeUp([0, -10e6, 20e6], { payback: 0.5 });
    expect(laidOut(later).paidBack?.x).toBeCloseTo((1 + 0.5 + 0.5) * 44, 9);
  });

  it('draws nothing of flows that cannot be worked out', () => {
    expect(layOutFlows(madeUp([-1, NaN]), 1, { column: 44, height: 200 })).toBeNull();
  });
});

describe('the width of a year', () => {
  const rows = yearRows(results, planScale(results), true);

  it('shares out what there is', () => {
    expect(columnWidth(rows, 16, 860, false) * 16).toBeCloseTo(860 - 16 - namesWidth, 6);
  });

  it('never cuts a figure: 31 years are wider than the page instead', () => {
    // "−38.5" is five characters of 6.9 px and room beside them.
    expect(columnWidth(rows, 31, 860, false)).toBeGreaterThan(5 * 6.9);
  });

  it('leaves room for slots where there are some', () => {
    expect(columnWidth(rows, 31, 860, true)).toBeGreaterThanOrEqual(54);
  });
});
