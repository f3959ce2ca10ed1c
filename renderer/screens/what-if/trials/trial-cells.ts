import type { Spread, TrialSummary } from '../../../../src/index.ts';
import { inputName } from '../tornado/input-name.ts';
import type { Cells } from '../../waste/cells.ts';
import { driverRows } from './driver-rows.ts';
import type { ResultFigures } from './result-figures.ts';
import { winningChance } from './winning-chance.ts';

/** Names of the percentiles that trials tell, in their order. */
const percentileNames = ['P5', 'P10', 'P50', 'P90', 'P95'] as const;

/** One row of the figures, a value for each column; the columns of bad years end after the percentiles. */
export interface FigureRow {
  readonly name: string;
  readonly values: readonly number[];
}

export interface FigureColumn {
  readonly name: string;
  readonly title: string;
}

/** The difference, then the two results it is the difference of; or the present value, then the cash flow of its bad years. */
export function figureColumns(
  { results, worst }: TrialSummary,
  { kind, base, other }: ResultFigures,
): readonly FigureColumn[] {
  const column = (name: string, title = name): FigureColumn => ({ name, title });
  return [
    column(kind),
    ...(results.length > 1 ? [column(base), column(other)] : []),
    ...(worst === null ? [] : [column('worst year', 'cash flow of the worst year of operation')]),
    ...(hasThree(worst) ? [column('worst three', 'cash flow of the worst three years of operation running')] : []),
  ];
}

function hasThree(worst: TrialSummary['worst']): worst is NonNullable<TrialSummary['worst']> {
  return worst !== null && worst.three.length > 0;
}

export function figureRows({ results, worst }: TrialSummary): readonly FigureRow[] {
  const flows = [...(worst === null ? [] : [worst.year]), ...(hasThree(worst) ? [worst.three] : [])];
  return [
    ...percentileNames.map((name, place) => ({
      name,
      values: [...results.map(({ percentiles }) => percentiles), ...flows].map((all) => all[place] ?? Number.NaN),
    })),
    { name: 'mean', values: results.map(({ mean }) => mean) },
    { name: 'standard error of the mean', values: results.map(({ standardError }) => standardError) },
    { name: 'standard deviation', values: results.map(({ deviation }) => deviation) },
  ];
}

/** Figures and bars of the picture as cells; the bins at either end also count what lies beyond them. */
export function pictureCells(summary: TrialSummary, figures: ResultFigures): Cells {
  const { from, width, counts } = summary.histogram;
  return [
    [figures.unit, ...figureColumns(summary, figures).map(({ title }) => title)],
    ...figureRows(summary).map(({ name, values }) => [name, ...values]),
    [`${aheadWords(figures)}, share of trials`, winningChance(summary, figures)],
    ...(summary.worst === null ? [] : [['a year of operation below nothing, share of trials', summary.worst.negative]]),
    ['trials', summary.trials],
    ['seed', summary.seed],
    [],
    ['from', 'to', 'trials'],
    ...counts.map((count, bin) => [edge(from, width, bin), edge(from, width, bin + 1), count]),
  ];
}

function aheadWords({ kind, other }: ResultFigures): string {
  return kind === 'difference' ? `${other} ahead` : 'the plan earns more than it costs';
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
