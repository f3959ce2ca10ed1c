import { describe, expect, it } from 'vitest';
import { NumberStyle } from '../../../renderer/numbers/number-style.ts';
import { chanceOf100 } from '../../../renderer/screens/what-if/trials/chance-of-100.ts';
import { breachLine, breachRows } from '../../../renderer/screens/what-if/trials/breaches.ts';
import { drawnWords, warningsOf } from '../../../renderer/screens/what-if/trials/drawn-words.ts';
import { decimalsFor, resultFigures } from '../../../renderer/screens/what-if/trials/result-figures.ts';
import {
  answer,
  pictureSentence,
  question,
  tailSentence,
} from '../../../renderer/screens/what-if/trials/trial-words.ts';
import type { TrialSummary } from '../../../src/index.ts';
import { settlingWords } from '../../../renderer/screens/what-if/trials/settling-words.ts';
import { shownSummary } from '../../../renderer/screens/what-if/trials/shown-summary.ts';
import { winningChance } from '../../../renderer/screens/what-if/trials/winning-chance.ts';
import { demonstrationSpread } from '../open-demonstration.ts';
import { demonstrationTrials, planTrials, withoutUncertainty } from './trials-summary.ts';

const spread = demonstrationSpread();
const numbers = new NumberStyle('en', 'EUR');
const trials = demonstrationTrials();
const ofCarbon = demonstrationTrials('difference.footprint.total');
const [result] = trials.results;
if (result === undefined) throw new Error('Trials tell of no result.');

const figuresOf = (summary: TrialSummary) => resultFigures(summary, spread, numbers);
const withTails = (p10: number, p90: number, of: TrialSummary = trials): TrialSummary => ({
  ...of,
  results: of.results.map((each) => ({ ...each, deviation: 30, percentiles: [p10 - 9, p10, 0, p90, p90 + 9] })),
});
const tails = (summary: TrialSummary) =>
  tailSentence(summary, figuresOf(summary))
    .map(({ text }) => text)
    .join('');
const drawn = (unit: string, how: 'once' | 'yearly', persistence = 0.7): TrialSummary['drawn'][number] => ({
  id: unit,
  label: 'Something',
  where: '',
  unit,
  distribution: { kind: 'uniform', low: 1, high: 2 },
  mean: 1.5,
  deviation: 0.3,
  drawn: how,
  persistence,
  reaches: true,
});

describe('how sure one can be', () => {
  it.each([
    { share: 0, words: 'fewer than 1 of 100' },
    { share: 0.0049, words: 'fewer than 1 of 100' },
    { share: 0.006, words: '1 of 100' },
    { share: 0.789, words: '79 of 100' },
    { share: 0.994, words: '99 of 100' },
    { share: 0.996, words: 'more than 99 of 100' },
    { share: 1, words: 'more than 99 of 100' },
    { share: Number.NaN, words: 'not yet' },
  ])('is said of a share of $share as "$words"', ({ share, words }) => {
    expect(chanceOf100(share)).toBe(words);
  });

  it('asks of the route that is compared whether it is cheaper', () => {
    const chance = Math.round(trials.belowNothing.share * 100);

    expect(question(trials, figuresOf(trials))).toBe('How sure: recovered is cheaper in');
    expect(answer(trials, figuresOf(trials))).toBe(`${String(chance)} of 100`);
  });

  it('asks of carbon whether it emits less, and says what a result leaves out', () => {
    const withoutPolicy = demonstrationTrials('difference.withoutPolicy');

    expect(question(ofCarbon, figuresOf(ofCarbon))).toBe('How sure: recovered emits less in');
    expect(figuresOf(ofCarbon).unit).toBe('kg CO2e a tonne');
    expect(question(withoutPolicy, figuresOf(withoutPolicy))).toBe(
      'How sure: recovered is cheaper, policy left out, in',
    );
  });

  it('names the routes themselves where both are of one kind', () => {
    const alike = {
      ...spread,
      base: { ...spread.with, label: 'Old train' },
      with: { ...spread.with, label: 'New train' },
    };

    expect(question(trials, resultFigures(trials, alike, numbers))).toBe('How sure: New train is cheaper in');
  });

  it('gives no chance where nothing was drawn', () => {
    const nothing = { ...trials, drawn: [] };

    expect(question(nothing, figuresOf(nothing))).toBe('How sure: nothing is said to be uncertain');
    expect(answer(nothing, figuresOf(nothing))).toBe('');
  });
});

describe('what one has to reckon with', () => {
  it('is a saving at one end and a loss at the other', () => {
    expect(tails(withTails(-101, 26))).toBe(
      'One chance in ten to save more than 101; one in ten to lose more than 26 € a tonne.',
    );
  });

  it('is a small saving at the worse end where both ends save', () => {
    expect(tails(withTails(-101, -12))).toBe(
      'One chance in ten to save more than 101; one in ten to save less than 12 € a tonne.',
    );
  });

  it('is a small loss at the better end where both ends lose', () => {
    expect(tails(withTails(12, 101))).toBe(
      'One chance in ten to lose less than 12; one in ten to lose more than 101 € a tonne.',
    );
  });

  it('is spared or added where carbon is asked for', () => {
    expect(tails(withTails(-101, 26, ofCarbon))).toBe(
      'One chance in ten to spare more than 101; one in ten to add more than 26 kg CO2e a tonne.',
    );
  });

  it('says so where no trial could be worked out', () => {
    expect(tails(withTails(Number.NaN, Number.NaN))).toBe('No trial could be worked out.');
  });

  it('is written with two digits of what it spreads by', () => {
    expect([26.8, 4.9, 0.489, 1234, 0].map(decimalsFor)).toEqual([0, 1, 2, 0, 2]);
  });

  it('is told in one sentence to those who do not see the picture', () => {
    expect(pictureSentence(withTails(-101, 26), figuresOf(withTails(-101, 26)), 'bars')).toBe(
      `Histogram: recovered is cheaper in ${answer(trials, figuresOf(trials))}. Half of the trials lie below 0 € a tonne; eight in ten lie from −101 to +26.`,
    );
  });
});

describe('a present value', () => {
  const ofPlan = planTrials();
  const figures = figuresOf(ofPlan);

  it('is asked whether the plan earns more than it costs, which it does above nothing', () => {
    const sure = { ...ofPlan, belowNothing: { share: 0.12, standardError: 0.003 } };

    expect(question(sure, figures)).toBe('How sure: the plan earns more than it costs in');
    expect(answer(sure, figures)).toBe('88 of 100');
    expect(winningChance(sure, { winsBelow: true })).toBe(0.12);
  });

  it('is told at either end with its sign, in millions', () => {
    expect(tails(withTails(-3.44, 34.92, ofPlan))).toBe(
      'One chance in ten of less than −3.4, one in ten of more than 34.9 € million.',
    );
  });

  it('has one decimal at least, two where it spreads by less than a million, and no plus', () => {
    const spreading = (deviation: number) =>
      figuresOf({ ...ofPlan, results: ofPlan.results.map((each) => ({ ...each, deviation })) });

    expect([140, 14, 1.4, 0.14].map((deviation) => spreading(deviation).decimals)).toEqual([1, 1, 1, 2]);
    expect(figures.signed(5)).toBe('5.0');
    expect([-10, 0, 2.5].map(figures.tick)).toEqual(['−10', '0', '2.5']);
    expect(figuresOf(trials).tick(2.5)).toBe('+2.5');
  });

  it('is told to those who do not see the picture', () => {
    expect(pictureSentence(withTails(-3.44, 34.92, ofPlan), figures, 'curve')).toBe(
      `Cumulative curve: the plan earns more than it costs in ${answer(ofPlan, figures)}. Half of the trials lie below 0.0 € million; eight in ten lie from −3.4 to 34.9.`,
    );
  });

  it('is drawn over the years of the plan, and is no mean of them', () => {
    // The plan of the example has 15 years after year 0.
    expect(drawnWords(ofPlan, numbers)).toBe(
      'years 0 to 15 of the plan; prices anew each year, 0.7 of a departure carried over; the rest once; each year taxed as if the years before had had its prices',
    );
    expect(drawnWords({ ...ofPlan, years: 1, drawn: [drawn('EUR/t', 'once')] }, numbers)).toBe(
      'everything drawn once for the plan',
    );
  });

  it('is divided by a million with all that is counted like it, and nothing else', () => {
    const [first] = ofPlan.results;
    if (first === undefined) throw new Error('Trials tell of no result.');
    const money = shownSummary(ofPlan, { scale: 1e-6 });

    expect(money.results[0]?.mean).toBeCloseTo(first.mean * 1e6, 3);
    expect(money.worst?.year[1]).toBeCloseTo((ofPlan.worst?.year[1] ?? Number.NaN) * 1e6, 3);
    expect(money.worst?.negative).toBe(ofPlan.worst?.negative);
    expect(money.belowNothing).toEqual(ofPlan.belowNothing);
    expect(money.histogram.counts).toEqual(ofPlan.histogram.counts);
    // The bins and the stops are of the same figures as the percentiles.
    const { from, width, counts } = ofPlan.histogram;
    expect(from).toBeLessThan(first.percentiles[0] ?? Number.NaN);
    expect(from + width * counts.length).toBeGreaterThan(first.percentiles[4] ?? Number.NaN);
    expect(ofPlan.convergence.at(-1)?.mean).toBeCloseTo(first.mean, 9);
  });
});

describe('limits', () => {
  const [breach] = trials.breaches;
  if (breach === undefined) throw new Error('The demonstration has no limits.');
  const broken = (...shares: readonly number[]): TrialSummary => ({
    ...trials,
    breaches: shares.map((share, place) => ({ ...breach, route: place === 0 ? 'virgin' : 'recovered', share })),
  });

  it('are named by how often they are broken, the worst first', () => {
    expect(breachLine(broken(0.12, 0.4), spread)).toBe(
      'Limits broken: Ash of the board (recovered) in 40 of 100; Ash of the board (virgin) in 12 of 100.',
    );
    expect(breachLine(broken(0, 0.4, 0.3, 0.001), spread)).toContain('in 30 of 100; 1 more.');
  });

  it('that are all kept are said to be, and none is said of where there are none', () => {
    expect(breachLine(broken(0, 0), spread)).toBe('No limit is broken in any trial.');
    expect(breachLine(broken(), spread)).toBe('');
  });

  it('broken in a few trials only are not said to be kept', () => {
    expect(breachRows(broken(0.001, 0), spread).map(({ often }) => often)).toEqual(['fewer than 1 of 100', 'none']);
  });
});

describe('how well the trials know', () => {
  it('is said with one standard error of the mean and of the chance', () => {
    const known = {
      ...trials,
      trials: 10_000,
      results: trials.results.map((each) => ({ ...each, mean: -21.704, standardError: 0.268 })),
      belowNothing: { share: 0.79, standardError: 0.0041 },
    };

    expect(settlingWords(known, figuresOf(known), numbers)).toBe(
      'After 10,000 trials the mean is −21.70 € a tonne, known to 0.27 either way (one standard error); the chance is known to 0.41 of 100.',
    );
  });

  it('is plain where all trials come to the same, and where none could be worked out', () => {
    const of = (mean: number) => ({
      ...trials,
      trials: 1_000,
      results: trials.results.map((each) => ({ ...each, mean, standardError: mean === 5 ? 0 : mean })),
    });

    expect(settlingWords(of(5), figuresOf(of(5)), numbers)).toBe('All 1,000 trials come to +5.00 € a tonne.');
    expect(settlingWords(of(Number.NaN), figuresOf(of(5)), numbers)).toBe('No trial could be worked out.');
  });
});

describe('what was drawn', () => {
  it('is named with the years and what is carried over', () => {
    const all = [drawn('EUR/t', 'yearly'), drawn('EUR/kWh', 'yearly'), drawn('EUR', 'once'), drawn('EUR/a', 'once')];

    expect(drawnWords({ ...trials, years: 10, drawn: all }, numbers)).toBe(
      'mean of 10 years; prices anew each year, 0.7 of a departure carried over; the rest once',
    );
  });

  it('counts inputs where prices and others are mixed, and says how differently they are carried over', () => {
    const all = [drawn('EUR/t', 'yearly', 0.3), drawn('%', 'yearly', 0.9), drawn('EUR/kWh', 'once')];

    expect(drawnWords({ ...trials, years: 5, drawn: all }, numbers)).toBe(
      'mean of 5 years; 2 of 3 inputs anew each year, 0.3 to 0.9 of a departure carried over; the rest once',
    );
  });

  it('is one year, or all years alike', () => {
    expect(drawnWords({ ...trials, years: 1, drawn: [drawn('EUR/t', 'yearly')] }, numbers)).toBe('one year');
    expect(drawnWords({ ...trials, years: 1, drawn: [drawn('EUR/t', 'once')] }, numbers)).toBe(
      'everything drawn once, all years alike',
    );
  });

  it('is said to be usual ranges where nobody has said anything', () => {
    const usual = demonstrationTrials('difference.total', withoutUncertainty());

    expect(drawnWords(usual, numbers)).toMatch(
      /^nobody has said what is uncertain: usual ranges of \d+ shared inputs are drawn; mean of 10 years; /u,
    );
  });

  it('warns of correlations that had to be moved, and of trials that were left out', () => {
    expect(warningsOf(trials, numbers)).toEqual([]);
    expect(warningsOf({ ...trials, trials: 10_000, repaired: 0.1234, failed: 12 }, numbers)).toEqual([
      'The correlations given cannot all be true together; they were moved by up to 0.12.',
      '12 of 10,000 trials could not be worked out and were left out.',
    ]);
  });
});
