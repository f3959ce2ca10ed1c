import type { Comparison } from '../study/comparison.ts';
import type { Sensitivity } from '../study/sensitivity.ts';
import { headlined } from '../wording/condition-phrase.ts';
import type { TieredPrice } from '../study/tiered-prices.ts';
import { restsPhrase } from '../wording/rests-phrase.ts';
import { marginalPowerSentence } from '../wording/marginal-power-sentence.ts';
import { formatNumber } from '../wording/number-format.ts';
import { unitLabel } from '../wording/unit-label.ts';
import { machineLines } from './machine-lines.ts';
import type { MachineEffect } from './machine-view.ts';
import type { Amount, Spread, SpreadSide } from './spread.ts';
import { figuresTable, textTable } from './text-table.ts';

/** The comparison as a page of plain text: the ledger line by line, then energy, lines, residues, and what to look at. */
export function statementPage(
  comparison: Comparison,
  spread: Spread,
  locale: string,
  rests: Sensitivity['rests'] | null = null,
  tiered: readonly TieredPrice[] = [],
  machine: MachineEffect | null = null,
): string {
  return [
    heading(comparison, spread, locale),
    ledger(spread, locale),
    [verdict(spread, locale), atMargin(comparison, spread, locale), rests === null ? '' : restsSentence(rests, locale)]
      .filter((part) => part !== '')
      .join('\n'),
    machine === null ? '' : machineLines(machine, locale),
    notCompared(comparison, spread, locale),
    physical(comparison, locale),
    tiers(tiered, locale),
    residues(comparison, locale),
    closing(spread),
  ]
    .filter((part) => part !== '')
    .join('\n\n')
    .concat('\n');
}

function restsSentence(rests: Sensitivity['rests'], locale: string): string {
  const phrase = restsPhrase(rests, locale);
  return phrase === '' ? '' : `It rests on: ${phrase} of all that its inputs could move it.`;
}

function heading({ product, currency, priceYear }: Comparison, { title }: Spread, locale: string): string {
  const tonnes = formatNumber(product.tonnesPerYear, { locale, decimals: 0 });
  const moisture = formatNumber(product.moisture * 100, { locale, significant: 3 });
  return `${title}\n1 t of ${product.name} at ${moisture} % moisture; ${tonnes} t a year; money in ${currency}, prices of ${priceYear}`;
}

function ledger({ base, with: other, groups, difference }: Spread, locale: string): string {
  const money = (digits: string, sign = false): string =>
    digits === '' ? 'not yet' : formatNumber(digits, { locale, decimals: 2, sign });
  const side = (of: SpreadSide | null): string => (of === null ? '' : money(of.amount.shownPerTonne));
  const row = (label: string, left: string, right: string, apart: Amount): string[] => [
    label,
    left,
    right,
    money(apart.shownPerTonne, true),
    money(apart.shownPerYear, true),
  ];
  const body = groups.flatMap((group) => [
    row(group.label, money(group.base.shownPerTonne), money(group.with.shownPerTonne), group.difference),
    ...group.rows.map((line) =>
      row(`  ${labelOf(line.base, line.with)}`, side(line.base), side(line.with), line.difference),
    ),
  ]);
  const heads = ['per tonne', base.label, other.label, 'difference', 'million a year'];
  return figuresTable(heads, [
    ...body,
    [],
    row('Whole cost', money(base.total.shownPerTonne), money(other.total.shownPerTonne), difference),
  ]);
}

/** Pulp that faces paper is named with both names. */
function labelOf(left: SpreadSide | null, right: SpreadSide | null): string {
  if (left === null || right === null || left.label === right.label) return (left ?? right)?.label ?? '';
  return `${left.label} | ${right.label}`;
}

function verdict(spread: Spread, locale: string): string {
  const { difference, with: other, base, currency } = spread;
  if (difference.shownPerTonne === '') return 'The difference cannot be worked out yet.';
  const amount = formatNumber(Math.abs(Number(difference.shownPerTonne)), { locale, decimals: 2 });
  const yearly = formatNumber(Math.abs(Number(difference.shownPerYear)), { locale, decimals: 2 });
  const word = difference.perTonne < 0 ? 'less' : 'more';
  if (Number(difference.shownPerTonne) === 0)
    return headlined(spread, `${other.label} costs the same as ${base.label}, to the cent.`);
  return headlined(
    spread,
    `${other.label} costs ${amount} ${currency} a tonne ${word} than ${base.label}: ${yearly} million a year.`,
  );
}

function atMargin({ difference }: Comparison, { base, with: other, currency }: Spread, locale: string): string {
  const { atMarginalPower: found } = difference;
  return found === undefined
    ? ''
    : marginalPowerSentence(found, { base: base.label, with: other.label, currency }, locale);
}

/** Routes of the case that stand on neither side of the ledger, with what they cost. */
function notCompared({ routes, currency }: Comparison, { base, with: other }: Spread, locale: string): string {
  const left = routes.filter(({ id }) => id !== base.id && id !== other.id);
  if (left.length === 0) return '';
  const told = left.map(
    ({ label, totals }) => `${label} ${formatNumber(totals.costPerTonne, { locale, decimals: 2 })} ${currency} a tonne`,
  );
  return `Compared above are ${base.label} and ${other.label}. Not compared: ${told.join('; ')}. Their lines are in the JSON.`;
}

function physical({ routes }: Comparison, locale: string): string {
  const number = (value: number, decimals: number): string => formatNumber(value, { locale, decimals });
  const rows: readonly (readonly [string, (route: Comparison['routes'][number]) => string])[] = [
    ['Electricity, kWh/t', ({ energy }) => number(energy.electricity, 0)],
    ['Heat, GJ/t', ({ energy }) => number(energy.heat, 2)],
    [`Fresh water, ${unitLabel('m3/t')}`, ({ water }) => number(water.fresh, 1)],
    [`Effluent, ${unitLabel('m3/t')}`, ({ water }) => number(water.effluent, 1)],
    [
      'Fibre bought, bone-dry t/t',
      ({ purchased }) =>
        number(
          purchased.reduce((sum, each) => sum + each.boneDry, 0),
          3,
        ),
    ],
    [
      'Residues as hauled, wet t/t',
      (route) =>
        number(
          route.residues.reduce((sum, each) => sum + each.wet, 0),
          3,
        ),
    ],
  ];
  const lines = routes.flatMap((route) =>
    route.lines.map((line) => [`Yield, ${route.label}: ${line.label}, %`, number(line.yield * 100, 1)]),
  );
  const head = ['', ...routes.map((route) => route.label)];
  return `${figuresTable(
    head,
    rows.map(([label, value]) => [label, ...routes.map(value)]),
  )}\n\n${figuresTable(['Line yields', ''], lines)}`;
}

/** What prices by tiers come to: the statement counts the average, one tonne more costs what the last does. */
function tiers(tiered: readonly TieredPrice[], locale: string): string {
  const number = (value: number, decimals: number): string => formatNumber(value, { locale, decimals });
  return tiered
    .map(
      ({ routeLabel, materialLabel, tonnage, tonnageUnit, average, marginal, priceUnit }) =>
        `Price tiers, ${routeLabel}: ${materialLabel}, ${number(tonnage, 0)} ${unitLabel(tonnageUnit)} at ${number(average, 2)} ${unitLabel(priceUnit)} on average; the last tonne costs ${number(marginal, 2)}.`,
    )
    .join('\n');
}

function residues({ routes }: Comparison, locale: string): string {
  const rows = routes.flatMap((route) =>
    route.residues
      .filter((residue) => residue.wet > 0)
      .map((residue) => [
        `${route.label}: ${residue.label}`,
        formatNumber(residue.dry * 1000, { locale, decimals: 2 }),
        formatNumber(residue.wet * 1000, { locale, decimals: 2 }),
        residue.destination
          .filter(({ wet }) => wet > 0)
          .map((destination) => destination.label)
          .join(', '),
      ]),
  );
  const words = ['Residues', 'to'];
  return textTable(
    ['Residues', 'dry kg/t', 'wet kg/t', 'to'].map((head) => ({
      head,
      holds: words.includes(head) ? 'words' : 'figures',
    })),
    rows,
  );
}

function closing({ warnings, checks }: Spread): string {
  const laws =
    checks.length === 0
      ? 'No balance is checked while figures are missing.'
      : checks.map((law) => `${law.kept ? 'yes' : 'NO'}: ${law.label.toLowerCase()}`).join('; ');
  const look = warnings.map((warning) => `  ${warning.sentence}`).join('\n');
  return warnings.length === 0 ? laws : `${laws}\nTo look at:\n${look}`;
}
