import type { InputView, InvestmentPlan, PlanResults } from '../../../src/index.ts';
import type { PlanFigure } from './plan-figure.ts';

/** Figures that can be given one by one for the years of a plan; null in years for which there is none. */
export interface YearFigures {
  readonly id: string;
  readonly label: string;
  /** What the figures are: "% of today". */
  readonly unit: string;
  readonly figures: readonly (PlanFigure | null)[];
}

/**
 * Every row of the year table, in the order in which it is shown. Prices of year 0 are today's, so they begin in the year after. Of the many
 * ways that residues could go, those have a row for which a share is given, or which somebody asked to see, by their stems.
 */
export function yearFigures(
  { plan, calendar, groups, residues }: PlanResults,
  currency: string,
  asked: readonly string[] = [],
): readonly YearFigures[] {
  const row = (
    id: string,
    label: string,
    unit: string,
    first: number,
    entry: Pick<PlanFigure, 'unit' | 'isMoney'> = { unit: '%', isMoney: false },
  ): YearFigures => ({
    id,
    label,
    unit,
    figures: calendar.map((year, place) =>
      place < first ? null : { id: `investment.${id}.${String(place)}`, label: `${label}, ${year}`, ...entry },
    ),
  });
  const prices = groups.map(({ id, label }) => row(`year.${id}`, label, '% of today', 1));
  const inOperation = (
    id: string,
    label: string,
    unit: string,
    entry: Pick<PlanFigure, 'unit' | 'isMoney'>,
  ): YearFigures => row(id, label, unit, plan.operatesFrom, entry);
  const money = { unit: currency, isMoney: true };
  const ramp = row('ramp', 'Stock made', '%', plan.operatesFrom + rampYearsApart);
  const ways = residues.outlets.filter(({ stem }) => asked.includes(stem) || isShareGiven(residues, stem));
  const hasCarbon = groups.some(({ id }) => id === 'carbon');
  return [
    ...prices,
    ...(hasCarbon ? [row('year.allocation', 'Free allocation', '% of today', 1)] : []),
    row('taxRate', 'Tax', '% of profit', 0),
    ...(plan.depreciation === 'table' ? [row('writtenOff', 'Written off', '% of the capital', plan.operatesFrom)] : []),
    row('replacement', 'Replacement', 'million', 0, money),
    inOperation('savingInstead', 'Saving typed', 'million, in place of the computed one', money),
    inOperation('savingBeside', 'Further saving', 'million', money),
    inOperation('moreTonnes', 'Tonnes ±', 't, lost ones below nothing', { unit: 't/a', isMoney: false }),
    inOperation('margin', 'Their margin', `${currency}/t`, { unit: `${currency}/t`, isMoney: false }),
    {
      ...ramp,
      // Years of operation are counted from 1; the first ones have places of their own.
      figures: ramp.figures.map((figure, place) =>
        figure === null ? null : { ...figure, id: `investment.ramp.${String(place - plan.operatesFrom + 1)}` },
      ),
    },
    ...ways.map(({ stem, label, takesShare }) => {
      const shares = row(stem, label, '% from this year on', 0);
      return {
        ...shares,
        figures: shares.figures.map((figure, place) => (takesShare[place] === true ? figure : null)),
      };
    }),
  ];
}

/** Years of the ramp that stand beside the other assumptions. */
const rampYearsApart = 3;

/** Whether a share of a way is given for any year. */
function isShareGiven({ shares }: PlanResults['residues'], stem: string): boolean {
  return shares.some(({ id }) => id.startsWith(`investment.${stem}.`));
}

/** How many values of years are given, replacements apart: those have places of their own. */
export function countGiven(rows: readonly YearFigures[], inputs: Readonly<Record<string, InputView>>): number {
  return rows
    .filter(({ id }) => id !== 'replacement')
    .flatMap(({ figures }) => figures)
    .filter((figure) => figure !== null && Object.hasOwn(inputs, figure.id)).length;
}

/** What a table of writing off comes to, in per cent; null where the plan is written off otherwise or nothing is given. */
export function writtenOffTotal(plan: InvestmentPlan, inputs: Readonly<Record<string, InputView>>): number | null {
  if (plan.depreciation !== 'table') return null;
  const given = Object.values(inputs).filter(({ id }) => /^investment\.writtenOff\.\d+$/u.test(id));
  return given.length === 0 ? null : given.reduce((sum, { value }) => sum + Number(value), 0);
}
