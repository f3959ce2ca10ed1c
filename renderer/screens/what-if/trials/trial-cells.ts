import type { Spread, TrialSummary } from '../../../../src/index.ts';
import { inputName } from '../tornado/input-name.ts';
import type { Cells } from '../../waste/cells.ts';
import { driverRows } from './driver-rows.ts';
import type { ResultFigures } from './result-figures.ts';

/** Names of the percentiles that trials tell, in their order. */
const percentileNames = ['P5', 'P10', 'P50', 'P90', 'P95'] as const;

/** One row of the figures: the difference, then the two results it is the difference of. */
export interface FigureRow {
  readonly name: string;
  readonly values: readonly number[];
}

export function figureRows({ results }: TrialSummary): readonly FigureRow[] {
  return [
    ...percentileNames.map((name, place) => ({
      name,
      values: results.map(({ percentiles }) => percentiles[place] ?? Number.NaN),
    })),
    { name: 'mean', values: results.map(({ mean }) => mean) },
    { name: 'standard error of the mean', values: results.map(({ standardError }) => standardError) },
    { name: 'standard deviation', values: results.map(({ deviation }) => deviation) },
  ];
}

/** Figures and bars of the picture as cells; the bins at either end also count what lies beyond them. */
export function pictureCells(summary: TrialSummary, { base, other, unit }: ResultFigures): Cells {
  const { from, width, counts } = summary.histogram;
  return [
    [unit, 'difference', ...(summary.results.length > 1 ? [base, other] : [])],
    ...figureRows(summary).map(({ name, values }) => [name, ...values]),
    [`${other} ahead, share of trials`, summary.belowNothing.share],
    ['trials', summary.trials],
    ['seed', summary.seed],
    [],
    ['from', 'to', 'trials'],
    ...counts.map((count, bin) => [edge(from, width, bin), edge(from, width, bin + 1), count]),
  ];
}

/** Edges are multiples of a round width, and written without the dust of binary fractions. */
function edge(from: number, width: number, bin: number): number {
  return Number((from + width * bin).toPrecision(12));
}

export function driverCells(summary: TrialSummary, spread: Spread): Cells {
  return [
    ['input', 'share of the variance, %'],
    ...driverRows(summary, spread).map(({ name, share }) => [name, share]),
  ];
}

export function settlingCells({ convergence }: TrialSummary, { unit }: ResultFigures): Cells {
  return [
    ['trials', `mean, ${unit}`, `standard error, ${unit}`],
    ...convergence.map(({ trials, mean, standardError }) => [trials, mean, standardError]),
  ];
}

export function drawnCells({ drawn }: TrialSummary, spread: Spread): Cells {
  return [
    ['input', 'unit', 'law', 'mean', 'standard deviation', 'drawn', 'carried over'],
    ...drawn.map((each) => [
      inputName(each, spread),
      each.unit,
      each.distribution.kind,
      each.mean,
      each.deviation,
      each.drawn,
      each.drawn === 'yearly' ? each.persistence : '',
    ]),
  ];
}
