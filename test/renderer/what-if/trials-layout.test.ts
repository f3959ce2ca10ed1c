import { describe, expect, it } from 'vitest';
import { driverRows } from '../../../renderer/screens/what-if/trials/driver-rows.ts';
import { layOutPicture } from '../../../renderer/screens/what-if/trials/picture-layout.ts';
import { layOutSettling } from '../../../renderer/screens/what-if/trials/settling-layout.ts';
import { figureColumns, figureRows, pictureCells } from '../../../renderer/screens/what-if/trials/trial-cells.ts';
import { NumberStyle } from '../../../renderer/numbers/number-style.ts';
import { resultFigures } from '../../../renderer/screens/what-if/trials/result-figures.ts';
import { toldPercentiles, type TrialSummary } from '../../../src/index.ts';
import { demonstrationSpread } from '../open-demonstration.ts';
import { demonstrationTrials, planTrials } from './trials-summary.ts';

const trials = demonstrationTrials();
const spread = demonstrationSpread();
const size = { width: 500, height: 150, above: 20, below: 20 };

/** Four bins of 10 from -20 on: 1, 4, 4 and 1 trials. */
function small(from = -20, percentiles: readonly number[] = [-18, -12, 0, 12, 18]): TrialSummary {
  return {
    ...trials,
    histogram: { from, width: 10, counts: [1, 4, 4, 1] },
    results: trials.results.map((each) => ({ ...each, percentiles })),
  };
}

describe('the picture of the trials', () => {
  it('gives each bar to the route that wins there, and its height to how often', () => {
    const layout = layOutPicture(small(), size, true);

    expect(layout?.bars.map(({ side }) => side)).toEqual(['with', 'with', 'base', 'base']);
    // From the ground at 130 up to 20: a quarter of 110 is 27.5.
    expect(layout?.bars.map(({ top }) => top)).toEqual([102.5, 20, 20, 102.5]);
    expect(layout?.bars.map(({ x }) => x)).toEqual([0, 125, 250, 375]);
    expect(layout?.zero).toBe(250);
  });

  it('turns the sides round where the route compared wins above nothing', () => {
    const layout = layOutPicture(small(), size, false);

    expect(layout?.bars.map(({ side }) => side)).toEqual(['base', 'base', 'with', 'with']);
    expect(layout?.areas).toEqual([
      { side: 'base', path: 'M0.0 130.0L0.0 130.0L125.0 119.0L250.0 75.0V130.0Z' },
      { side: 'with', path: 'M250.0 130.0L250.0 75.0L375.0 31.0L500.0 20.0V130.0Z' },
    ]);
  });

  it('runs from none to all of the trials, one area for each route', () => {
    const layout = layOutPicture(small(), size, true);

    // Shares 0, 0.1, 0.5, 0.9 and 1 of 110 pixels.
    expect(layout?.curve).toBe('M0.0 130.0L125.0 119.0L250.0 75.0L375.0 31.0L500.0 20.0');
    expect(layout?.areas).toEqual([
      { side: 'with', path: 'M0.0 130.0L0.0 130.0L125.0 119.0L250.0 75.0V130.0Z' },
      { side: 'base', path: 'M250.0 130.0L250.0 75.0L375.0 31.0L500.0 20.0V130.0Z' },
    ]);
  });

  it('takes nothing in where it lies near, and says on which side it lies where it does not', () => {
    const near = layOutPicture(small(10, [11, 12, 30, 48, 49]), size, true);
    expect(near?.zero).toBe(0);
    expect(near?.bars.every(({ side }) => side === 'base')).toBe(true);

    expect(layOutPicture(small(100, [101, 102, 120, 138, 139]), size, true)).toMatchObject({
      zero: null,
      zeroLies: 'to the left',
    });
    expect(layOutPicture(small(-140, [-139, -138, -120, -102, -101]), size, true)).toMatchObject({
      zero: null,
      zeroLies: 'to the right',
    });
  });

  it('keeps the labels of the percentiles apart and inside, however near their lines stand', () => {
    const marks = layOutPicture(small(-20, [-19.9, -19.8, -19.7, -19.6, 19]), size, true)?.marks ?? [];
    const places = marks.map(({ place }) => place);

    expect(marks.map(({ name }) => name)).toEqual(['P10', 'P50', 'P90']);
    expect(places).toEqual([37, 111, 185]);
    expect(marks[0]?.x).toBeCloseTo(2.5, 6);
    // A tenth, a half and nine tenths of the 110 pixels above the ground at 130.
    expect(marks.map(({ level }) => Math.round(level))).toEqual([119, 75, 31]);
  });

  it('is not drawn where no trial could be worked out', () => {
    expect(layOutPicture({ ...trials, histogram: { from: 0, width: 1, counts: [] } }, size, true)).toBeNull();
  });

  it('shows every trial that was drawn', () => {
    const count = trials.histogram.counts.reduce((sum, each) => sum + each, 0);

    expect(count).toBe(trials.trials);
    expect(layOutPicture(trials, size, true)?.bars).toHaveLength(trials.histogram.counts.length);
  });
});

describe('who makes the result spread', () => {
  it('adds up to a hundred, largest first, with what no input explains at the end', () => {
    const rows = driverRows(trials, spread);

    expect(rows.reduce((sum, { share }) => sum + Math.round(share * 10), 0)).toBe(1000);
    expect(rows.at(-1)?.isRest).toBe(true);
    const inputs = rows.slice(0, -1).map(({ share }) => share);
    expect(inputs.toSorted((a, b) => b - a)).toEqual(inputs);
    expect(rows[0]?.name).toBe('Net price agreed (Bleached chemi-thermomechanical)');
  });

  it('keeps a share below nothing', () => {
    const [one, other] = trials.variance.inputs;
    if (one === undefined || other === undefined) throw new Error('Too few inputs.');
    const inputs = [
      { ...one, share: 1.1234 },
      { ...other, share: -0.1234 },
    ];

    const rows = driverRows({ ...trials, variance: { inputs, rest: 0 } }, spread);

    expect(rows.map(({ share }) => share)).toEqual([112.3, -12.3, 0]);
  });

  it('has nobody to name where nothing spreads', () => {
    expect(driverRows({ ...trials, variance: { inputs: [], rest: 0 } }, spread)).toEqual([]);
  });
});

describe('how the mean settles', () => {
  const room = { left: 0, right: 300, top: 0, bottom: 100 };

  it('gives every tenfold of trials the same width', () => {
    const stops = [100, 1_000, 10_000, 100_000].map((count) => ({ trials: count, mean: 5, standardError: 1 }));

    expect(layOutSettling(stops, room)?.points.map(({ x }) => Math.round(x))).toEqual([0, 100, 200, 300]);
  });

  it('labels the last stop and leaves out those that would touch', () => {
    const across = layOutSettling(trials.convergence, room)?.across ?? [];

    expect(across.at(-1)?.trials).toBe(2_000);
    for (const [place, stop] of across.entries()) {
      const next = across[place + 1];
      if (next !== undefined) expect(next.x - stop.x).toBeGreaterThanOrEqual(62);
    }
  });

  it('is a level line where all trials come to the same', () => {
    const stops = [100, 1_000].map((count) => ({ trials: count, mean: 5, standardError: 0 }));

    expect(layOutSettling(stops, room)?.points.map(({ y }) => y)).toEqual([50, 50]);
  });

  it('writes its ticks with as many decimals as tell them apart', () => {
    const stops = (error: number) => [100, 1_000].map((count) => ({ trials: count, mean: 5, standardError: error }));

    // From 4 to 6 by halves, from 4.99 to 5.01 by half hundredths, from -995 to 1,005 by 500.
    expect([1, 0.01, 1_000].map((error) => layOutSettling(stops(error), room)?.decimals)).toEqual([1, 3, 0]);
  });

  it('is not drawn through a single stop', () => {
    expect(layOutSettling([], room)).toBeNull();
    expect(layOutSettling([{ trials: 100, mean: 1, standardError: 1 }], room)).toBeNull();
  });
});

describe('the figures behind the picture', () => {
  it('name the percentiles that the engine tells', () => {
    const names = figureRows(trials).map(({ name }) => name);

    expect(names.slice(0, toldPercentiles.length)).toEqual(toldPercentiles.map((percent) => `P${String(percent)}`));
  });

  it('tell both costs beside their difference, whose means differ by just that', () => {
    const [difference = Number.NaN, base = Number.NaN, other = Number.NaN] =
      figureRows(trials).find(({ name }) => name === 'mean')?.values ?? [];

    expect(other - base).toBeCloseTo(difference, 9);
  });

  it('copy as cells with every bin', () => {
    const cells = pictureCells(trials, resultFigures(trials, spread, new NumberStyle('en', 'EUR')));

    expect(cells[0]).toEqual(['€ a tonne', 'difference', 'virgin', 'recovered']);
    const start = cells.findIndex(([head]) => head === 'from');
    expect(cells.length - start - 1).toBe(trials.histogram.counts.length);
    const counted = cells.slice(start + 1).reduce((sum, [, , count]) => sum + Number(count), 0);
    expect(counted).toBe(trials.trials);
  });
});

describe('the figures of a present value', () => {
  const ofPlan = planTrials();
  const figures = resultFigures(ofPlan, spread, new NumberStyle('en', 'EUR'));
  const names = figureColumns(ofPlan, figures).map(({ name }) => name);

  it('stand alone, with the bad years of the plan beside them', () => {
    expect(ofPlan.results).toHaveLength(1);
    expect(names).toEqual(['present value', 'worst year', 'worst three']);
  });

  it('tell bad years by percentiles only', () => {
    const rows = figureRows(ofPlan);

    expect(rows.find(({ name }) => name === 'P10')?.values).toEqual([
      ofPlan.results[0]?.percentiles[1],
      ofPlan.worst?.year[1],
      ofPlan.worst?.three[1],
    ]);
    expect(rows.find(({ name }) => name === 'mean')?.values).toHaveLength(1);
  });

  it('leave out three years running where the plan has none', () => {
    const short = { ...ofPlan, worst: { year: [1, 2, 3, 4, 5], three: [], negative: 0 } };

    expect(figureColumns(short, figures).map(({ name }) => name)).toEqual(['present value', 'worst year']);
    expect(figureRows(short)[0]?.values).toHaveLength(2);
  });

  it('copy as cells, in millions', () => {
    const cells = pictureCells(ofPlan, figures);
    const share = (head: string) => cells.find(([first]) => first === head)?.[1];

    expect(cells[0]).toEqual([
      '€ million',
      'present value',
      'cash flow of the worst year of operation',
      'cash flow of the worst three years of operation running',
    ]);
    expect(share('the plan earns more than it costs, share of trials')).toBe(1 - ofPlan.belowNothing.share);
    expect(share('a year of operation below nothing, share of trials')).toBe(ofPlan.worst?.negative);
  });
});
