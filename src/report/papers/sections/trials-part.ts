import { type TrialSummary, toldPercentiles } from '../../../study/uncertainty/trial-summary.ts';
import { chanceText } from '../../../wording/chance-text.ts';
import { drawingPhrase } from '../../../wording/drawing-phrase.ts';
import { formatNumber } from '../../../wording/number-format.ts';
import { unitLabel } from '../../../wording/unit-label.ts';
import { type Markup, element } from '../markup.ts';
import type { PaperFacts } from '../paper-facts.ts';
import { part } from '../part.ts';
import { ruledTable } from '../ruled-table.ts';

const mostDrivers = 10;

/** How the results spread when all that is uncertain is drawn at once. */
export function trialsPart({ trials, plan, spread }: PaperFacts, locale: string): Markup {
  const of = plan === null ? [trials] : [trials, plan.trials];
  return part(
    'How sure',
    `${formatNumber(trials.trials, { locale, decimals: 0 })} trials, seed ${String(trials.seed)}; ${drawingPhrase(trials, locale)}`,
    element(
      'p',
      {},
      `“${spread.with.label}” costs less in ${chanceText(trials.belowNothing.share, locale)} of 100 trials${plan === null ? '' : `, and the plan ends above zero in ${chanceText(1 - plan.trials.belowNothing.share, locale)} of 100`}.`,
    ),
    of.map((each) => [spreadTable(each, locale), driverTable(each, locale)]),
  );
}

function spreadTable({ results }: TrialSummary, locale: string): Markup {
  const heads = ['Result', 'mean', 'standard error', ...toldPercentiles.map((percent) => `P${String(percent)}`)];
  const rows = results.map(({ label, unit, mean, standardError, percentiles }) => {
    const text = (value: number): string => formatNumber(value, { locale, significant: 5 });
    return {
      cells: [
        `${label}, ${unitLabel(unit)}`,
        text(mean),
        formatNumber(standardError, { locale, significant: 2 }),
        ...percentiles.map(text),
      ],
    };
  });
  const columns = heads.map((head, place) => ({ head, holds: place === 0 ? 'words' : 'figures' }) as const);
  return ruledTable(columns, rows, 'Percentiles of the results over all trials');
}

function driverTable({ variance, results }: TrialSummary, locale: string): Markup {
  const share = (value: number): string => formatNumber(value * 100, { locale, decimals: 0 });
  const named = variance.inputs.slice(0, mostDrivers);
  const others = variance.inputs.slice(mostDrivers).reduce((sum, each) => sum + each.share, 0);
  const rows = [
    ...named.map(({ label, where, share: of }) => ({
      cells: [where === '' ? label : `${label}, ${where}`, share(of)],
    })),
    ...(others === 0 ? [] : [{ cells: ['All other inputs', share(others)] }]),
    { cells: ['Bends and joint effects', share(variance.rest)] },
  ];
  const columns = [
    { head: `What makes “${results[0]?.label ?? ''}” spread`, holds: 'words' },
    { head: 'share of variance, %', holds: 'figures' },
  ] as const;
  return ruledTable(columns, rows, 'Share of the variance by input');
}
