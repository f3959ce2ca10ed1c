import { describe, expect, test } from 'vitest';
import { editStructure, restoreDefault, spreadOf } from '../../src/index.ts';
import { workOut } from '../../src/study/open-case.ts';
import { demonstration, valueOf } from '../examples/demonstration.ts';
import { printed } from '../support/printed.ts';

const open = demonstration();

describe('what an auditor must know', () => {
  test('an old price is said to be old in all that prints, and one without a date to have none', () => {
    const edit = { kind: 'date input', input: 'material.bskp.price', date: '2025-10-01' } as const;
    const old = printed(valueOf(editStructure(open, edit)));

    for (const text of Object.values(old)) {
      expect(text).toContain('Bleached softwood kraft: price of 1 October 2025, 13 months ago: out of date.');
      expect(text).toContain('No date is given for');
    }
  });

  test('a figure measured far from the computed one is told in all that prints', () => {
    const actual = { result: 'virgin.electricity.total', value: '700', unit: 'kWh/t', period: '2025' };
    const told = printed(valueOf(editStructure(open, { kind: 'put actual', actual })));

    // By hand: 927.1 computed against 700 is 32.4 % more.
    for (const text of Object.values(told))
      expect(text).toContain('32.4 % above what was measured. Nothing was fitted.');
  });
});

test('a case that misses a figure has no headline to mislead with', () => {
  const gap = valueOf(restoreDefault(open, 'recovered.mixed.share'));

  expect(spreadOf(gap).difference.shownPerTonne).toBe('');
  expect(printed(gap).page).toContain('The difference cannot be worked out yet.');
  expect(workOut(gap.content).ok).toBe(true);
});
