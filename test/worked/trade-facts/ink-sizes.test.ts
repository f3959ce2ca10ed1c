import { describe, expect, test } from 'vitest';
import { componentLabels } from '../../../src/paper/components.ts';
import { stageEntries } from '../../../src/paper/catalogue.ts';

// Common practice, no source: printed ink runs from particles of 1 to 10 um, as newspaper ink leaves them, up to about 1000 um, as
// toner and varnish do.
const printed = { smallest: 1, largest: 1000 };

interface Sizes {
  readonly from: number;
  readonly to: number;
}

/** The sizes that a label names, in um. */
function sizesIn(label: string): Sizes {
  const numbers = [...label.matchAll(/\d+/gu)].map(([digits]) => Number(digits));
  const [first = NaN, second = NaN] = numbers;
  if (label.includes('under')) return { from: 0, to: first };
  return label.includes('over') ? { from: first, to: Infinity } : { from: first, to: second };
}

const labels = [componentLabels.inkSmall, componentLabels.inkMid, componentLabels.inkLarge];

describe('the three ink sizes', () => {
  test.each(labels.map((label) => ({ label })))('say their bounds in micrometres: $label', ({ label }) => {
    expect(label).toMatch(/^Ink (under|over|\d+ to) \d+ µm$/u);
  });

  test('follow one another without a gap or an overlap', () => {
    const [small, middle, large] = labels.map(sizesIn);

    expect(small?.to).toBe(middle?.from);
    expect(middle?.to).toBe(large?.from);
  });

  test('cover all printed ink, each of them a part of it', () => {
    const sizes = labels.map(sizesIn);

    expect(Math.min(...sizes.map(({ from }) => from))).toBeLessThan(printed.smallest);
    expect(Math.max(...sizes.map(({ to }) => to))).toBeGreaterThan(printed.largest);
    for (const { from, to } of sizes)
      expect(Math.min(to, printed.largest) - Math.max(from, printed.smallest)).toBeGreaterThan(0);
  });

  test('are taken best each by another machine: washing the smallest, flotation the middle, cleaning the largest', () => {
    const washed = stageEntries.get('washer')?.washer?.passage ?? {};
    const floated = stageEntries.get('flot1')?.removal ?? {};
    const cleaned = stageEntries.get('fcln')?.cascade?.quotient ?? {};
    const value = (figure: { readonly value: string } | undefined): number => Number(figure?.value ?? 0);

    expect(value(washed.inkSmall)).toBeGreaterThan(value(washed.inkMid));
    expect(value(washed.inkMid)).toBeGreaterThan(value(washed.inkLarge));
    expect(value(floated.inkMid)).toBeGreaterThan(value(floated.inkSmall));
    expect(value(floated.inkMid)).toBeGreaterThan(value(floated.inkLarge));
    expect(value(cleaned.inkLarge)).toBeGreaterThan(value(cleaned.inkMid));
  });
});
