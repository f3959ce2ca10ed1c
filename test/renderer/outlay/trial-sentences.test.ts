import { describe, expect, it } from 'vitest';
import { planCells } from '../../../renderer/screens/outlay/plan-cells.ts';
import { planScale } from '../../../renderer/screens/outlay/plan-scale.ts';
import {
  drawnSentence,
  spreadSentence,
  worstSentence,
  type Part,
} from '../../../renderer/screens/outlay/trial-sentences.ts';
import { yearRows } from '../../../renderer/screens/outlay/year-rows.ts';
import { npvId, type TrialSummary } from '../../../src/index.ts';
import { demonstrationTrials } from '../what-if/trials-summary.ts';
import { planCase, planText } from './plan-case.ts';

const { results } = planCase().answer;
const scale = planScale(results);
const summary = demonstrationTrials(npvId, planText);
const said = (parts: readonly Part[]): string => parts.map(({ text }) => text).join('');

describe('what the trials say', () => {
  it('gives the tenth and the ninetieth percentile of the present value', () => {
    const [main] = summary.results;
    if (main === undefined) throw new Error('There is no result.');
    const made: TrialSummary = {
      ...summary,
      results: [{ ...main, percentiles: [-9e6, -3.14e6, 20e6, 41.66e6, 50e6] }],
    };
    expect(said(spreadSentence(made, scale, 'en'))).toBe(
      'One chance in ten of a present value below \u22123.1 million, one in ten above 41.7.',
    );
  });

  it('gives the worst years and how often one is below nothing', () => {
    const made: TrialSummary = {
      ...summary,
      worst: { year: [-2e6, -0.1e6, 3e6, 5e6, 6e6], three: [1e6, 5.2e6, 9e6, 12e6, 13e6], negative: 0.112 },
    };
    expect(said(worstSentence(made, scale, 'en'))).toBe(
      'In one trial of ten the worst year brings less than \u22120.1, the worst three running less than 5.2; ' +
        'a year of operation falls below nothing in 11 of 100.',
    );
  });

  it('never calls certain what was only drawn', () => {
    const with_ = (negative: number) =>
      said(worstSentence({ ...summary, worst: { year: [1, 1, 1, 1, 1], three: [], negative } }, scale, 'en'));
    expect(with_(0.001)).toContain('fewer than 1 of 100');
    expect(with_(0.999)).toContain('more than 99 of 100');
  });

  it('says what was drawn: the seed, and how often', () => {
    expect(drawnSentence(summary, 'en')).toMatch(/^2,000 trials, seed 20261; /u);
    expect(drawnSentence(summary, 'de')).toMatch(/^2\.000 trials/u);
  });

  it('says so where nothing is uncertain, and gives no chance', () => {
    const still: TrialSummary = { ...summary, drawn: [] };
    expect(said(spreadSentence(still, scale, 'en'))).toContain('Nothing is said to be uncertain');
    expect(worstSentence(still, scale, 'en')).toEqual([]);
    expect(drawnSentence(still, 'en')).toBe('');
  });
});

describe('the table as cells', () => {
  it('carries figures as shown, and what one must know of them', () => {
    const rows = yearRows(results, scale, true);
    const cells = planCells(rows, results, scale, { currency: 'EUR', money: 'real, prices of 2024' });
    expect(cells[0]?.slice(0, 3)).toEqual(['million EUR', '2025', '2026']);
    expect(cells.find(([label]) => label === 'Cumulative')?.at(-1)).toBe(85);
    expect(cells.at(-1)?.[0]).toContain('Before financing; against Virgin middle ply; real, prices of 2024');
  });
});
