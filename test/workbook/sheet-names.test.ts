import { describe, expect, it } from 'vitest';
import { SheetNames } from '../../src/workbook/sheet-names.ts';

describe('the name of a sheet', () => {
  it.each([
    ['Statement', 'Statement'],
    ['Calc a/b: [what?]', 'Calc a b what'],
    ["'quoted'", 'quoted'],
    ['', 'Sheet'],
    ['x'.repeat(40), 'x'.repeat(31)],
    [`${'x'.repeat(30)}😀`, 'x'.repeat(30)],
  ])('wanted as "%s" is "%s"', (wanted, name) => {
    expect(new SheetNames().nameFor(wanted)).toBe(name);
  });

  it('is told apart from one that is there, within 31 characters', () => {
    const names = new SheetNames();
    const long = 'y'.repeat(40);

    expect(['Costs', 'costs', long, long].map((wanted) => names.nameFor(wanted))).toEqual([
      'Costs',
      'costs (2)',
      'y'.repeat(31),
      `${'y'.repeat(27)} (2)`,
    ]);
  });
});
