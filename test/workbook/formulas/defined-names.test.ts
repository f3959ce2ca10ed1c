import { describe, expect, it } from 'vitest';
import { DefinedNames } from '../../../src/workbook/formulas/defined-names.ts';

describe('the name of a cell', () => {
  it.each([
    ['virgin.cost.total', 'virgin_cost_total'],
    ['recovered.mixed.fine-screen.rejectRate', 'recovered_mixed_fine_screen_rejectRate'],
    ['co2', 'co2_'],
    ['R1C1', 'R1C1_'],
    ['2nd.yield', '_2nd_yield'],
    ['fixed.44.kgCO2 per tC', 'fixed_44_kgCO2_per_tC'],
  ])('of "%s" is %s', (id, name) => {
    expect(new DefinedNames().nameFor(id)).toBe(name);
  });

  it('is given once, however it is capitalised and whatever stood between its words', () => {
    const names = new DefinedNames();

    expect(['a.b-c', 'a-b.c', 'A.B.C'].map((id) => names.nameFor(id))).toEqual(['a_b_c', 'a_b_c_2', 'A_B_C_3']);
  });

  it('is cut where a spreadsheet would not take it', () => {
    expect(new DefinedNames().nameFor('x.'.repeat(300)).length).toBeLessThan(256);
  });
});
