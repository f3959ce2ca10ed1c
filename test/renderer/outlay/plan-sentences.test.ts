import { describe, expect, it } from 'vitest';
import { NumberStyle } from '../../../renderer/numbers/number-style.ts';
import { planScale } from '../../../renderer/screens/outlay/plan-scale.ts';
import {
  headline,
  lateSentence,
  moneySentence,
  moneyWords,
  ratesSentence,
  turningYear,
} from '../../../renderer/screens/outlay/plan-sentences.ts';
import { pictureSentence } from '../../../renderer/screens/outlay/picture-sentence.ts';
import { madeUp, planCase } from './plan-case.ts';

const english = new NumberStyle('en', 'EUR');
const german = new NumberStyle('de', 'EUR');
const { results } = planCase().answer;
const scale = planScale(results);

describe('the headline', () => {
  // The sums of the example turn between 2030 (year 5) and 2031 (year 6): the payback of 5.65 years lies in 2031.
  it('says what the plan earns and in which year it is paid back', () => {
    expect(headline(results, scale, english)).toBe(
      'The new plant earns €38.7 million more than it costs, and is paid back during 2031.',
    );
  });

  it('speaks in the figures of the place', () => {
    expect(headline(results, scale, german)).toContain('38,7 million');
  });

  it('says plainly that a plan is never paid back', () => {
    const never = madeUp([-40e6, 5e6, 5e6], { npv: -30e6 });
    expect(headline(never, planScale(never), english)).toBe(
      'The new plant costs €30.0 million more than it earns, and is never paid back by 2032.',
    );
  });

  it('says that a payback leaves interest out where the plan loses all the same', () => {
    const late = madeUp([-40e6, 20e6, 21e6], { npv: -2e6, payback: 1.95 });
    expect(headline(late, planScale(late), english)).toBe(
      'The new plant costs €2.0 million more than it earns, though, interest not counted, it is paid back during 2032.',
    );
  });

  it('calls what rounds to nothing even', () => {
    const even = madeUp([-40e6, 40e6], { npv: 40_000, payback: 1 });
    expect(headline(even, planScale(even), english)).toBe(
      'The new plant earns as much as it costs; it is paid back during 2031.',
    );
  });

  it('says that it is not known yet', () => {
    const unknown = madeUp([NaN, 1], { npv: NaN, payback: NaN });
    expect(headline(unknown, planScale(unknown), english)).toBe('What the new plant earns cannot be worked out yet.');
  });

  it('sets a code of money apart from its figure', () => {
    expect(moneyWords(5e6, scale, new NumberStyle('en', 'CHF'))).toBe('CHF\u00a05.0 million');
  });
});

describe('the year in which a sum turns', () => {
  it('is counted from the first money, not from year 0', () => {
    expect(turningYear(madeUp([0, -10, 20, 20]), 0.5)).toBe('2032');
  });

  it('is the year at whose end a whole number of years is over', () => {
    expect(turningYear(madeUp([-10, 5, 5]), 2)).toBe('2032');
  });

  it('is none where the sum never turns', () => {
    expect(turningYear(madeUp([-10, 1]), null)).toBe('');
  });
});

describe('what the results stand on', () => {
  // 1.08/1.02 - 1 = 5.88 %.
  it('names both rates, the one in use first', () => {
    expect(ratesSentence(results, 'en')).toBe('5.88\u00a0% real is 8\u00a0% nominal');
    expect(ratesSentence({ ...results, plan: { ...results.plan, money: 'nominal' } }, 'en')).toBe(
      '8\u00a0% nominal is 5.88\u00a0% real',
    );
  });

  it('says that real and nominal are one where there is no inflation', () => {
    const still = { nominal: 0.08, real: 0.08, inflation: 0, used: 0.08 };
    expect(ratesSentence({ ...results, rates: still }, 'en')).toContain('inflation is nothing');
  });

  it('names the price year, also of a present value in nominal money', () => {
    expect(moneySentence(results.plan, '2024')).toBe('real, prices of 2024');
    expect(moneySentence({ ...results.plan, money: 'nominal' }, '2024')).toBe(
      'nominal, money of each year; the present value in money of 2024',
    );
  });

  it('says what a later start costs', () => {
    const late = { figure: 0, high: 12, atHigh: results.npv - 7.2e6 };
    expect(lateSentence(results, late, scale, english)).toBe('A start 12 months late costs €7.2 million.');
    expect(lateSentence(results, { ...late, figure: 6 }, scale, english)).toContain('another 6 months late');
  });

  it('says nothing of a later start that is no later than the one planned', () => {
    expect(lateSentence(results, { figure: 12, high: 12, atHigh: 0 }, scale, english)).toBe('');
    expect(lateSentence(results, undefined, scale, english)).toBe('');
  });
});

describe('the picture in one sentence', () => {
  it('names the depth, both paybacks and the end', () => {
    expect(pictureSentence(results, scale, english)).toBe(
      'Cash flow of each year from 2025 to 2040 and its running sum: it falls to minus €38.5 million, is paid back ' +
        'after 5.7 years, in 2031, with interest counted after 6.9 years, in 2032, and ends at €85.0 million.',
    );
  });
});
