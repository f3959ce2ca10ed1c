import { describe, expect, it } from 'vitest';
import { taxesOn } from '../../support/finance/tax.ts';

const profits = [-100, -50, 80, 120, 40];

describe('tax', () => {
  it('gives money back in the year of a loss where losses are used at once', () => {
    expect(taxesOn(profits, 0.25, 'at once')).toEqual({ taxes: [-25, -12.5, 20, 30, 10], lossLeft: 0 });
  });

  it('sets losses carried forward against later profits until they are used up', () => {
    // 150 of losses: 80 go against the third year, 70 against the fourth, which leaves 50 to tax.
    expect(taxesOn(profits, 0.25, 'carried forward')).toEqual({ taxes: [0, 0, 0, 12.5, 10], lossLeft: 0 });
  });

  it('says what losses no profit has absorbed', () => {
    expect(taxesOn([-100, 30, -20], 0.25, 'carried forward')).toEqual({ taxes: [0, 0, 0], lossLeft: 90 });
    expect(taxesOn([-100, 30, -20], 0.25, 'at once').lossLeft).toBe(0);
  });

  it('never looks back: a loss after a profit brings nothing back', () => {
    expect(taxesOn([100, -100], 0.25, 'carried forward')).toEqual({ taxes: [25, 0], lossLeft: 100 });
  });

  it('takes a rate for each year; a year without one pays none', () => {
    expect(taxesOn([100, 100, 100], [0.2, 0.3], 'at once').taxes).toEqual([20, 30, 0]);
    // The loss is worth the rate of the year that absorbs it.
    expect(taxesOn([-100, 100, 100], [0.5, 0.2, 0.3], 'carried forward').taxes).toEqual([0, 0, 30]);
  });

  it('is nothing at no rate, and that is not minus nothing', () => {
    expect(taxesOn([-100, 0, 100], 0, 'at once').taxes).toEqual([0, 0, 0]);
    expect(taxesOn([-100, 0, 100], 0, 'carried forward').taxes).toEqual([0, 0, 0]);
  });

  it('adds up to the same under both rules where one rate holds and all losses are absorbed', () => {
    const sumOf = (taxes: readonly number[]): number => taxes.reduce((sum, each) => sum + each, 0);

    expect(sumOf(taxesOn(profits, 0.25, 'carried forward').taxes)).toBe(sumOf(taxesOn(profits, 0.25, 'at once').taxes));
  });
});
