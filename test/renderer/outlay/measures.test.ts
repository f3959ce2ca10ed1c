import { describe, expect, it } from 'vitest';
import { NumberStyle } from '../../../renderer/numbers/number-style.ts';
import {
  chanceMeasure,
  discountedMeasure,
  internalMeasure,
  paybackMeasure,
} from '../../../renderer/screens/outlay/measures.ts';
import { otherMeasures } from '../../../renderer/screens/outlay/other-measures.ts';
import { madeUp, planCase } from './plan-case.ts';

const english = new NumberStyle('en', 'EUR');
const rate = (share: number) => ({ rate: share, isMeaningless: share < -0.99 });
const withRates = (...shares: readonly number[]) =>
  madeUp([-1, 2], { internal: { rates: shares.map(rate), always: false } });

describe('the internal rate', () => {
  it('is one figure where there is one', () => {
    expect(internalMeasure(withRates(0.1696), english)).toEqual({
      figure: '17.0',
      unit: '%',
      words: 'internal rate of return, real',
    });
  });

  it('is none where there is none', () => {
    expect(internalMeasure(withRates(), english)).toMatchObject({
      figure: 'none',
      words: 'no internal rate of return',
    });
  });

  it('names every rate where there are several', () => {
    expect(internalMeasure(withRates(0.1, 0.5), english)).toMatchObject({
      figure: '2',
      unit: 'rates',
      words: '10\u00a0% and 50\u00a0%: none of them ranks it',
    });
  });

  it('calls a rate near total loss meaningless', () => {
    expect(internalMeasure(withRates(-0.995), english).words).toContain('meaningless');
  });

  it('is not yet known where a flow is not', () => {
    expect(internalMeasure(madeUp([NaN, 1], { internal: null }), english).figure).toBe('not yet');
  });

  it('is any rate where nothing flows', () => {
    expect(internalMeasure(madeUp([0, 0], { internal: { rates: [], always: true } }), english).figure).toBe('any');
  });
});

describe('payback', () => {
  const { results } = planCase().answer;

  it('is counted from the first money and from start-up', () => {
    expect(paybackMeasure(results, 0, english)).toEqual({
      figure: '5.7',
      unit: 'years',
      words: 'from first money; 3.7 from start-up',
    });
  });

  it('is never, plainly', () => {
    expect(paybackMeasure(madeUp([-1, 0]), 0, english).figure).toBe('never');
    expect(discountedMeasure(madeUp([-1, 0]), english).figure).toBe('never');
  });

  it('has nothing to count where nothing is ever owed', () => {
    expect(paybackMeasure(madeUp([1, 1], { payback: 0 }), 0, english).figure).toBe('at once');
  });

  it('takes no year of operation off where money is back before start-up', () => {
    const early = madeUp([-1, 2, 1], { payback: 0.5 });
    expect(paybackMeasure(early, 0, english).words).toBe('paid back before start-up');
  });
});

describe('the chance', () => {
  it('counts trials of a hundred', () => {
    expect(chanceMeasure(0.936)).toMatchObject({ figure: '94', unit: 'in 100' });
  });

  it('never says that what was drawn is certain', () => {
    expect(chanceMeasure(1).figure).toContain('99');
    expect(chanceMeasure(1).figure).not.toContain('100');
    expect(chanceMeasure(0).figure).toContain('1');
  });

  it('is not yet known before trials are drawn', () => {
    expect(chanceMeasure(null).figure).toBe('not yet');
  });
});

describe('other measures', () => {
  it('give the annual tonnes and the price of each fibre at which the plan breaks even', () => {
    const { results } = planCase().answer;
    const named = otherMeasures(results, english);
    expect(named.find(({ name }) => name.includes('tonnes'))).toMatchObject({
      text: '53,640 t/year',
      note: 'now 96,000',
    });
    expect(named.filter(({ name }) => name.startsWith('Breaks even at'))).toHaveLength(6);
  });

  it('say where a price was looked for in vain', () => {
    const { results } = planCase().answer;
    expect(otherMeasures(results, english).find(({ text }) => text === 'nowhere')?.note).toMatch(
      /^now \d+; none from/u,
    );
  });

  it('say that there is no modified rate and no index where nothing is spent', () => {
    const texts = otherMeasures(madeUp([1, 1]), english).map(({ text }) => text);
    expect(texts.slice(0, 2)).toEqual(['none', 'none']);
  });
});
