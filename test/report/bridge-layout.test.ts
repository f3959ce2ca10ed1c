import { describe, expect, it } from 'vitest';
import { layOutBridge } from '../../src/report/bridge-layout.ts';
import type { Spread } from '../../src/report/spread.ts';
import { demonstrationSpread } from '../renderer/open-demonstration.ts';

const size = { width: 900, height: 120, above: 20, below: 20 };
const spread = demonstrationSpread();

describe('the bridge', () => {
  it('leads from one whole cost to the other, each step from where the last one ended', () => {
    const layout = layOutBridge(spread, size);
    const steps = layout?.bars.filter(({ isStep }) => isStep) ?? [];

    const sum = steps.reduce((level, { digits }) => level + Number(digits), Number(spread.base.total.shownPerTonne));
    expect(sum).toBeCloseTo(Number(spread.with.total.shownPerTonne), 9);
    layout?.bars.slice(1).forEach((bar, place) => {
      const from = layout.bars[place]?.level ?? Number.NaN;
      const meets = [bar.top, bar.bottom].some((end) => Math.abs(end - from) < 1e-6);
      expect(meets || !bar.isStep).toBe(true);
    });
    expect(layout?.bars.at(-1)?.level).toBeCloseTo(layout?.bars.at(-2)?.level ?? Number.NaN, 6);
  });

  it('makes each step of the paper of the route that pays more', () => {
    const layout = layOutBridge(spread, size);

    for (const { digits, isStep, kind } of layout?.bars ?? [])
      if (isStep) expect(kind).toBe(digits.startsWith('-') ? 'virgin' : 'recovered');
  });

  it('starts its scale above zero, at a round figure below every bar, when all bars are far from the ground', () => {
    const layout = layOutBridge(spread, size);

    expect(layout?.startsAt).toBeGreaterThan(0);
    expect((layout?.startsAt ?? 0) % 10).toBe(0);
    for (const { top, level } of layout?.bars ?? []) {
      expect(level).toBeLessThan(layout?.ground ?? 0);
      expect(top).toBeGreaterThanOrEqual(size.above);
    }
  });

  it('starts its scale at zero when a route costs little', () => {
    const cheap: Spread = {
      ...spread,
      base: { ...spread.base, total: { ...spread.base.total, shownPerTonne: '100.00' } },
      with: { ...spread.with, total: { ...spread.with.total, shownPerTonne: '39.64' } },
      groups: spread.groups.map((group, place) => ({
        ...group,
        difference: { ...group.difference, shownPerTonne: place === 0 ? '-60.36' : '0.00' },
      })),
    };

    expect(layOutBridge(cheap, size)?.startsAt).toBe(0);
  });

  it('is not drawn while a figure of it cannot be worked out', () => {
    const lacking: Spread = {
      ...spread,
      base: { ...spread.base, total: { ...spread.base.total, shownPerTonne: '', perTonne: Number.NaN } },
    };

    expect(layOutBridge(lacking, size)).toBeNull();
  });
});
