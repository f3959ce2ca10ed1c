import { type TrialSummary, formatNumber, toldPercentiles, uncertainty, unitLabel } from '../index.ts';
import { textTable } from '../report/text-table.ts';
import { distributionPhrase } from '../wording/distribution-phrase.ts';
import { drawingPhrase } from '../wording/drawing-phrase.ts';
import type { Console } from './console.ts';
import { type SetOptions, openWithSets, wholly } from './open-with-sets.ts';
import { resultOf } from './result-of.ts';
import { wholeOption } from './whole-option.ts';

export interface UncertaintyOptions extends SetOptions {
  readonly result: string;
  readonly trials?: string;
  readonly seed?: string;
  readonly years?: string;
  readonly json?: boolean;
}

/** Draws what is uncertain and prints how a result spreads. */
export function showUncertainty(console: Console, file: string, options: UncertaintyOptions): void {
  const open = wholly(openWithSets(file, options));
  const changes = {
    ...wholeOption('trials', options.trials, 1_000, 1_000_000),
    ...wholeOption('seed', options.seed, 0, 4_294_967_295),
    ...wholeOption('years', options.years, 1, 30),
  };
  const found = uncertainty(open, resultOf(open, options.result), changes);
  console.say(options.json === true ? `${JSON.stringify(found, null, 2)}\n` : page(found, console.locale));
}

function page(found: TrialSummary, locale: string): string {
  return [
    head(found, locale),
    spreads(found, locale),
    chance(found, locale),
    worstYears(found, locale),
    drivers(found, locale),
    draws(found, locale),
    broken(found, locale),
  ]
    .filter((part) => part !== '')
    .map((part) => `${part}\n`)
    .join('\n');
}

function head(found: TrialSummary, locale: string): string {
  const count = (value: number): string => formatNumber(value, { locale, decimals: 0 });
  const notes = [
    `${count(found.trials)} trials, seed ${String(found.seed)}; ${drawingPhrase(found, locale)}`,
    `At today's figures it is ${formatNumber(found.today, { locale, significant: 6 })}.`,
    found.fading === 0
      ? ''
      : `${count(found.fading)} of the correlations join inputs that are carried from year to year differently: they hold fully in the first year only.`,
    found.isUsual && found.drawn.length > 0
      ? 'Nobody has said what is uncertain: inputs that both routes share are drawn over their usual ranges.'
      : '',
    found.repaired === null
      ? ''
      : `The correlations given cannot all be true together; they were moved by up to ${formatNumber(found.repaired, { locale, decimals: 3 })}.`,
    found.failed === 0 ? '' : `${count(found.failed)} trials could not be worked out and are left out.`,
  ];
  return notes.filter((note) => note !== '').join('\n');
}

function spreads(found: TrialSummary, locale: string): string {
  const number = (value: number): string => formatNumber(value, { locale, significant: 6 });
  const heads = [
    'result',
    'unit',
    'mean',
    'standard error',
    'deviation',
    ...toldPercentiles.map((each) => `P${String(each)}`),
  ];
  const rows = found.results.map((each) => [
    each.id,
    unitLabel(each.unit),
    ...[each.mean, each.standardError, each.deviation, ...each.percentiles].map(number),
  ]);
  return textTable(
    heads.map((name) => ({ head: name, holds: name === 'result' || name === 'unit' ? 'words' : 'figures' })),
    rows,
  );
}

function chance({ results, belowNothing }: TrialSummary, locale: string): string {
  const percent = (share: number): string => `${formatNumber(share * 100, { locale, decimals: 1 })} %`;
  return `${results[0]?.id ?? ''} is below 0 in ${percent(belowNothing.share)} of the trials (standard error ${percent(belowNothing.standardError)}).`;
}

/** Of a present value: cash flows of bad years, in its unit. */
function worstYears({ results, worst }: TrialSummary, locale: string): string {
  if (worst === null) return '';
  const unit = unitLabel(results[0]?.unit ?? '');
  const told = (values: readonly number[]): string =>
    [10, 50]
      .map((percent) => {
        const value = values[toldPercentiles.findIndex((each) => each === percent)] ?? NaN;
        return `P${String(percent)} ${formatNumber(value, { locale, significant: 6 })} ${unit}`;
      })
      .join(', ');
  const three = worst.three.length === 0 ? '' : ` worst three running: ${told(worst.three)};`;
  const negative = formatNumber(worst.negative * 100, { locale, decimals: 1 });
  return `Worst year of operation: ${told(worst.year)};${three} a year below nothing in ${negative} % of the trials.`;
}

function drivers({ variance }: TrialSummary, locale: string): string {
  const percent = (share: number): string => `${formatNumber(share * 100, { locale, decimals: 1 })} %`;
  const rows = variance.inputs.map(({ label, where, share }) => [named(label, where), percent(share)]);
  return textTable(
    [
      { head: 'input', holds: 'words' },
      { head: 'share of variance', holds: 'figures' },
    ],
    [...rows, ['bends and joint effects', percent(variance.rest)]],
  );
}

function draws({ drawn }: TrialSummary, locale: string): string {
  const rows = drawn.map((each) => [
    named(each.label, each.where),
    unitLabel(each.unit),
    distributionPhrase(each.distribution, locale),
    each.drawn === 'once'
      ? 'once'
      : `yearly, ${formatNumber(each.persistence, { locale, significant: 3 })} carried over`,
  ]);
  return textTable(
    ['drawn', 'unit', 'law', 'how often'].map((name) => ({ head: name, holds: 'words' as const })),
    rows,
  );
}

function broken({ breaches }: TrialSummary, locale: string): string {
  return breaches
    .map(
      ({ limit, route, unit, share }) =>
        `${limit.label}, ${limit.sense} ${formatNumber(limit.value, { locale })} ${unitLabel(unit)}: broken by ${route} in ${formatNumber(share * 100, { locale, decimals: 1 })} % of the trials.`,
    )
    .join('\n');
}

function named(label: string, where: string): string {
  return where === '' ? label : `${label} (${where})`;
}
