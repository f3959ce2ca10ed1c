import { type PlanResults, formatNumber, npvId, planResults, sensitivity, uncertainty, unitLabel } from '../index.ts';
import { figuresTable } from '../report/text-table.ts';
import { conditionPhrase } from '../wording/condition-phrase.ts';
import { millions, percent, planVerdict, rateWords } from '../wording/plan-verdict.ts';
import { outletSentences } from '../wording/plan-words.ts';
import { type Console, Refusal } from './console.ts';
import { type SetOptions, openWithSets, wholly } from './open-with-sets.ts';

export interface InvestOptions extends SetOptions {
  readonly json?: boolean;
}

/** Prints the investment plan of a case: a verdict, the flows of every year, and every measure of return. */
export function showInvestment(console: Console, file: string, options: InvestOptions): void {
  const open = wholly(openWithSets(file, options));
  const results = planResults(open);
  if (results === null) throw new Refusal(['This case has no investment plan.']);
  const trials = uncertainty(open, npvId);
  const doubts = { swings: sensitivity(open, npvId).judged, trials };
  const aboveNothing = 1 - trials.belowNothing.share;
  const verdict = planVerdict(results, doubts, open.content.currency, console.locale);
  if (options.json === true) {
    console.say(
      `${JSON.stringify({ verdict, condition: conditionPhrase({ capital: 'counted', sameProduct: results.sameProduct }), aboveNothing, ...results }, null, 2)}\n`,
    );
    return;
  }
  console.say(
    `${[verdict, years(results, console.locale), measures(results, open.content.currency, console.locale)].join('\n\n')}\n`,
  );
}

function years(results: PlanResults, locale: string): string {
  const row = (label: string, values: readonly number[]): readonly string[] => [
    label,
    ...values.map((value) => millions(value, locale, 2)),
  ];
  const rows = [
    ...results.rows
      .filter(({ values }) => values.some((value) => value !== 0))
      .map(({ label, values }) => row(label, values)),
    row('Cash flow', results.flows),
    row('So far', results.cumulative),
    row('Discounted so far', results.discounted),
  ];
  return figuresTable(['million', ...results.calendar], rows);
}

function measures(results: PlanResults, currency: string, locale: string): string {
  const { rates, plan, levelised, breakEvens } = results;
  const inYears = (value: number): string => `${formatNumber(value, { locale, decimals: 2 })} years`;
  const price =
    plan.money === 'real'
      ? `real, ${percent(rates.nominal, locale, 2)} nominal`
      : `nominal, ${percent(rates.real, locale, 2)} real`;
  const lines = [
    `Net present value ${millions(results.npv, locale, 3)} million ${currency} at ${percent(rates.used, locale, 2)} ${price}, inflation ${percent(rates.inflation, locale, 2)}.`,
    `Internal rate: ${rateWords(results, locale)}; modified ${results.modified === null ? 'none' : percent(results.modified, locale, 2)}.`,
    results.payback === null
      ? 'Not paid back within the plan.'
      : `Paid back after ${inYears(results.payback)} from the first money; with interest counted ${results.discountedPayback === null ? 'not within the plan' : `after ${inYears(results.discountedPayback)}`}.`,
    `Profitability index ${results.index === null ? 'none' : formatNumber(results.index, { locale, decimals: 3 })}.`,
    `A tonne carries ${formatNumber(levelised.cost, { locale, decimals: 2 })} ${currency} of the plan before tax and saves ${formatNumber(levelised.saving, { locale, decimals: 2 })}, both levelised.`,
    ...[breakEvens.tonnes, ...breakEvens.fibre].flatMap((each) => {
      if (each === null) return [];
      const found = each.crossings.map((value) => formatNumber(value, { locale, significant: 6 })).join('; ');
      const searched = `none from ${formatNumber(each.from, { locale, significant: 4 })} to ${formatNumber(each.to, { locale, significant: 4 })}`;
      const name = each.where === '' ? each.label : `${each.label} (${each.where})`;
      return [`Breaks even at ${name}: ${found === '' ? searched : found} ${unitLabel(each.unit)}.`];
    }),
    ...outletSentences(results, locale),
    'Capital stands in this plan and not in the statement.',
  ];
  return lines.join('\n');
}
