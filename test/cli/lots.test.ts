import { describe, expect, it } from 'vitest';
import { demonstrationFile, jsonOf, planFile, tonne } from './terminal.ts';

const story = 'examples/stories/s4.tonne';

describe('lots', () => {
  it('shows the cheap wet lot to be the dearer one, and what may be paid for it', async () => {
    const { code, out } = await tonne(['lots', story]);

    expect(code).toBe(0);
    expect(out).toMatch(/Wetherby Yard +2 .*12\.80 \(11\.67 to 13\.93, 8 more halve it\).* 23\.2533 .* 199\.48/u);
    expect(out).toMatch(/Dunnock Baling +1 .* 190\.75/u);
    expect(out).toMatch(/Wetherby Yard +118\.06 +117\.87 to 118\.24 +best other lot/u);
    expect(out).toContain('Dunnock Baling: One reading of the moisture has no interval');
  });

  it('writes the same as JSON', async () => {
    const found = (await jsonOf(['lots', story])) as { lots: { cost: number; rank: number }[]; line: string };

    expect(found.line).toBe('paper');
    expect(found.lots.map(({ cost, rank }) => [cost.toFixed(2), rank])).toEqual([
      ['199.48', 2],
      ['190.75', 1],
    ]);
  });

  it('says so where a case has none', async () => {
    expect((await tonne(['lots', planFile])).out).toBe('This case has no lots.\n');
  });

  it('explains what a lot costs, down to what was found in it', async () => {
    const { code, out } = await tonne(['explain', story, 'recovered.cost.total', '--lot', 'a']);

    expect(code).toBe(0);
    expect(out).toContain('199.479');
    expect(out).toContain('Lot: Wetherby Yard');
    expect(out).toContain('Sand, glass and metal, found');
  });

  it('names the lots there are when another is asked for', async () => {
    const { code, err } = await tonne(['explain', story, 'recovered.cost.total', '--lot', 'c']);

    expect(code).toBe(1);
    expect(err).toBe('There is no lot "c" in this case; it has a, b.\n');
  });

  it('leaves the demonstration to be compared as before', async () => {
    expect((await tonne(['lots', demonstrationFile])).code).toBe(0);
  });
});
