import { describe, expect, it } from 'vitest';
import { breakEven } from '../../../src/study/break-even.ts';
import { ResultTape } from '../../../src/study/result-tape.ts';
import { TrialRun } from '../../../src/study/uncertainty/run-trials.ts';
import { trialPlan } from '../../../src/study/uncertainty/trial-plan.ts';
import { trialSummary } from '../../../src/study/uncertainty/trial-summary.ts';
import { open, trialsOf } from './demonstration.ts';

const price = 'material.mixed.price';
const total = 'difference.total';

describe('trials', () => {
  it('are the same to the last bit however they are split', () => {
    const plan = trialPlan(open, total, { trials: 5000 });
    const drawn = (first: number, count: number) => {
      const run = new TrialRun(plan, first, count);
      while (!run.isDone) run.step();
      return run.segment;
    };

    const whole = trialSummary(open, plan, [drawn(0, 5000)]);
    const parts = trialSummary(open, plan, [drawn(3072, 1928), drawn(0, 1024), drawn(1024, 2048)]);

    expect(parts).toEqual(whole);
  });

  it('are others for another seed, and the same again for the same', () => {
    const of = (seed: number) =>
      trialsOf(total, { [price]: { law: 'uniform', low: '80', high: '120' } }, { seed }).results[0];

    expect(of(1)).toEqual(of(1));
    expect(of(1)?.mean).not.toBe(of(2)?.mean);
  });

  // The difference is a straight line in the price of the paper, so its mean is its value at the mean price, (60 + 104 + 230) / 3.
  it('of a straight line have the mean of the line at the mean', () => {
    const [difference] = trialsOf(total, {
      [price]: { law: 'triangular', low: '60', mode: '104', high: '230' },
    }).results;
    const expected = new ResultTape(open, total).at(price, (60 + 104 + 230) / 3);

    expect(Math.abs((difference?.mean ?? NaN) - expected)).toBeLessThan(4 * (difference?.standardError ?? NaN));
  });

  it('pair the routes: what the means differ by is the mean of the difference', () => {
    const { results } = trialsOf(total, { [price]: { law: 'uniform', low: '60', high: '230' } });
    const [difference, virgin, recovered] = results.map(({ mean }) => mean);

    expect(results.map(({ id }) => id)).toEqual([total, 'virgin.cost.total', 'recovered.cost.total']);
    expect((recovered ?? NaN) - (virgin ?? NaN)).toBeCloseTo(difference ?? NaN, 8);
  });

  // The difference turns at one price; a uniform price lies below it with a chance that is a ratio of lengths.
  it('count the chance that recovered is cheaper', () => {
    const tape = new ResultTape(open, total);
    const [at100, at300] = [tape.at(price, 100), tape.at(price, 300)];
    const turns = 100 + (200 * -at100) / (at300 - at100);
    const { belowNothing } = trialsOf(total, { [price]: { law: 'uniform', low: '100', high: '500' } });

    expect(Math.abs(belowNothing.share - (turns - 100) / 400)).toBeLessThan(4 * belowNothing.standardError);
  });

  it('that cannot be worked out are counted and left out', () => {
    // The other lines hold 60 % of the stock: above 40 % for mixed paper less than nothing is left. Of 20 to 60 % that is half.
    const { failed, trials, results } = trialsOf(total, {
      'recovered.mixed.share': { law: 'uniform', low: '20', high: '60' },
    });

    expect(failed / trials).toBeCloseTo(0.5, 1.5);
    expect(results[0]?.mean).toSatisfy(Number.isFinite);
  });

  it('say how often a limit is broken', () => {
    // Ash grows with the share of mixed paper and reaches its limit of 8 % at one share; a uniform share lies above it with a chance that is a
    // ratio of lengths. Four standard errors of 20,000 trials are 1.4 %.
    const [limit] = breakEven(open, 'recovered.productAsh', 'recovered.mixed.share', 0.08)?.crossings ?? [];
    const expected = (40 - (limit ?? NaN)) / 20;
    const { breaches } = trialsOf(total, { 'recovered.mixed.share': { law: 'uniform', low: '20', high: '40' } });
    const ash = breaches.find(({ limit, route }) => limit.id === 'ash' && route === 'recovered');

    expect(expected).toBeGreaterThan(0.2);
    expect(Math.abs((ash?.share ?? NaN) - expected)).toBeLessThan(0.014);
    expect(breaches.find(({ limit, route }) => limit.id === 'ash' && route === 'virgin')?.share).toBe(0);
  });

  it('never draw what can never be true of an input', () => {
    const [drawn] = trialsOf(price, {
      [price]: { law: 'normal', mean: '10', deviation: '20', low: '0', high: '30' },
    }).results;

    expect(drawn?.percentiles.every((value) => value >= 0 && value <= 30)).toBe(true);
  });

  it('of nothing uncertain all come to today', () => {
    const { results, belowNothing, variance } = trialsOf(total, { [price]: { law: 'fixed' } }, { trials: 1000 });

    expect(results[0]?.deviation).toBe(0);
    expect(belowNothing.share).toBe(1);
    expect(variance.inputs).toEqual([]);
  });

  // Above 40 % for mixed paper nothing can be worked out; what breaks a limit is counted among the rest, and never more often than they are.
  it('that cannot be worked out count in no share', () => {
    const summary = trialsOf(total, { 'recovered.mixed.share': { law: 'uniform', low: '35', high: '45' } });
    const ash = summary.breaches.find(({ limit, route }) => limit.id === 'ash' && route === 'recovered');

    expect(summary.failed).toBeGreaterThan(5000);
    expect(ash?.share).toBe(1);
    const [difference, virgin, recovered] = summary.results.map(({ mean }) => mean);
    expect((recovered ?? NaN) - (virgin ?? NaN)).toBeCloseTo(difference ?? NaN, 8);
  });

  it('stand beside what the result is today', () => {
    const { today } = trialsOf(total, { [price]: { law: 'fixed' } }, { trials: 1000 });

    expect(today).toBeCloseTo(open.values.number(total), 9);
  });

  it('tell of correlations that fade from year to year', () => {
    const inputs = {
      [price]: { law: 'uniform', low: '80', high: '120' },
      'recovered.capital': { law: 'uniform', low: '4e7', high: '5e7' },
      'recovered.labour': { law: 'uniform', low: '1e6', high: '2e6' },
    } as const;
    const pair = (other: string) => [{ one: 'recovered.capital', other, value: '0.5' }];

    expect(trialsOf(total, inputs, { years: 5, trials: 1000, correlations: pair(price) }).fading).toBe(1);
    // Labour is paid by the year and drawn once, as the capital is.
    expect(trialsOf(total, inputs, { years: 5, trials: 1000, correlations: pair('recovered.labour') }).fading).toBe(0);
  });
});
