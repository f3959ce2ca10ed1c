import { parseUnit } from '../../kernel/units/unit.ts';
import { type TrialSummary, toldPercentiles } from '../../study/uncertainty/trial-summary.ts';
import { distributionPhrase } from '../../wording/distribution-phrase.ts';
import { unitLabel } from '../../wording/unit-label.ts';
import { heads, note, strong, text, told } from '../cells.ts';
import type { Verdict } from '../checks/verdict.ts';
import type { ModelCells } from '../model/model-cells.ts';
import { numberForm } from '../number-form.ts';
import type { Cell, SheetPlan } from '../plan.ts';
import { baseRows } from './base-rows.ts';
import { framed } from './framed.ts';

/** How the difference spreads when what is uncertain is drawn. `trials` is null where none were drawn. */
export function uncertaintySheet(
  cells: ModelCells,
  name: string,
  verdict: Verdict,
  trials: TrialSummary | null,
): SheetPlan {
  return framed({
    name,
    title: 'Uncertainty',
    says: 'Results of the program at the moment of writing: they do not follow the inputs. Only the first figure does.',
    verdict,
    heads: heads(
      'Figure',
      'Mean',
      'Unit',
      'Standard error',
      'Deviation',
      ...toldPercentiles.map((each) => `P${String(each)}`),
    ),
    widths: [52, 18, 20, 36, 16, 16, 16, 16, 16, 16],
    rows: [
      ...baseRows(cells, cells.open.model.difference.totalId, name, verdict),
      ...(trials === null ? [[note('No trials were drawn.')]] : summaryRows(trials, cells.open.content.currency)),
    ],
    frozenColumns: 1,
  });
}

function summaryRows(trials: TrialSummary, currency: string): readonly (readonly Cell[])[] {
  const { results, belowNothing, variance, drawn, histogram } = trials;
  return [
    [text('Trials'), told(trials.trials, 'whole')],
    [text('Seed'), told(trials.seed, 'whole')],
    [text('Trials that could not be worked out, left out'), told(trials.failed, 'whole')],
    [text('Years over which a trial is averaged'), told(trials.years, 'whole')],
    ...(trials.isUsual
      ? [[note('Nobody has said what is uncertain: inputs that both routes share are drawn over their usual ranges.')]]
      : []),
    [],
    ...results.map(({ label, id, unit, mean, standardError, deviation, percentiles }): readonly Cell[] => {
      const form = numberForm(parseUnit(unit), undefined, currency);
      const figures = [standardError, deviation, ...percentiles].map((value) => told(value, form));
      return [text(`${label} (${id})`), told(mean, form), text(unitLabel(unit)), ...figures];
    }),
    [],
    [
      text('Share of the trials below nothing'),
      told(belowNothing.share, 'share'),
      text(''),
      told(belowNothing.standardError, 'share'),
    ],
    [],
    [strong('What moves it, as shares of the variance')],
    ...variance.inputs.map(({ label, where, share }) => [
      text(`   ${label}`),
      told(share, 'share'),
      text(''),
      text(where),
    ]),
    [text('   bends and joint effects'), told(variance.rest, 'share')],
    [],
    [strong('What is drawn')],
    ...drawn.map((each) => [
      text(`   ${each.label}`),
      text(distributionPhrase(each.distribution, 'en')),
      text(unitLabel(each.unit)),
      text(each.where),
    ]),
    [],
    ...histogramRows(histogram),
  ];
}

/** Trials in bins of equal width. */
function histogramRows({ from, width, counts }: TrialSummary['histogram']): readonly (readonly Cell[])[] {
  return [
    [strong('How often: from, to, trials')],
    ...counts.map((count, bin) => [
      told(from + bin * width, 'quantity'),
      told(from + (bin + 1) * width, 'quantity'),
      told(count, 'whole'),
    ]),
  ];
}
