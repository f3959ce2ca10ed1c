import { type OpenCase, formatNumber, unitLabel } from '../index.ts';
import { figuresTable, textTable } from '../report/text-table.ts';
import { highsSolver } from '../study/lots/blend/highs-solver.ts';
import type { BlendCheck, BlendRecord } from '../study/lots/blend/blend-record.ts';
import { type GivenBlend, givenBlend } from '../study/lots/blend/given-blend.ts';
import { type LeastCostBlend, leastCostBlend } from '../study/lots/blend/least-cost-blend.ts';
import { type PricedLots, priceLots } from '../study/lots/price-lots.ts';
import type { PricedLot } from '../study/lots/priced-lot.ts';
import { blendLimitPhrase, blendReasonSentence, givenBlendSentence } from '../wording/blend-sentence.ts';
import { lotSentence } from '../wording/lot-sentence.ts';
import type { Console } from './console.ts';
import { type SetOptions, openWithSets, wholly } from './open-with-sets.ts';

export interface LotsOptions extends SetOptions {
  readonly json?: boolean;
}

/** Prints the lots of a case side by side, what may be paid for each, and the cheapest blend of them within its limits. */
export async function showLots(console: Console, file: string, options: LotsOptions): Promise<void> {
  const open = wholly(openWithSets(file, options));
  const priced = priceLots(open, console.today);
  if (priced === null || priced.lots.length === 0) {
    console.say(priced === null ? 'No line of this case is fed recovered paper.\n' : 'This case has no lots.\n');
    return;
  }
  const { blend } = open.content.lots ?? {};
  const found = blend === undefined ? null : leastCostBlend(open, priced, blend, await highsSolver());
  const given = blend === undefined ? null : givenBlend(open, priced, blend);
  if (options.json === true) {
    console.say(`${JSON.stringify({ ...jsonOf(priced), givenBlend: given, blend: found }, null, 2)}\n`);
    return;
  }
  const blocks = [
    heading(open, priced, console.locale),
    comparison(priced, console.locale),
    walkAways(priced, console.locale),
    worths(priced, console.locale),
    ...(given === null ? [] : [givenPage(given, priced, console.locale)]),
    ...(found === null ? [] : [blendPage(found, priced, console.locale)]),
    ...notes(priced, console.locale),
  ];
  console.say(`${blocks.join('\n\n')}\n`);
}

function jsonOf({ line, ...rest }: PricedLots) {
  return { route: line.route.id, line: line.line.id, ...rest };
}

function heading({ content }: OpenCase, { line, virgin, today }: PricedLots, locale: string): string {
  const money = (value: number): string => formatNumber(value, { locale, decimals: 2 });
  return [
    `${line.route.label}, ${line.line.label}: lots in its place, ${content.currency} per tonne of ${content.product.name}`,
    `Cost of a tonne as the line is fed today: ${money(today)}`,
    ...(virgin === null
      ? []
      : [
          virgin.isWholeRoute
            ? `By the whole virgin route, ${virgin.label}: ${money(virgin.cost)}`
            : `With ${virgin.label} in the same share: ${money(virgin.cost)}`,
        ]),
    ...(line.isGone ? ['The line that the case names for lots is no longer there.'] : []),
  ].join('\n');
}

function comparison({ lots }: PricedLots, locale: string): string {
  const number = (value: number, decimals: number): string => formatNumber(value, { locale, decimals });
  const heads = [
    'lot',
    'rank',
    'asked',
    'moisture %',
    'unusable %',
    'payable t',
    'claim, wet',
    'stock bdt/t',
    'cost',
    'kg CO2e',
  ];
  const rows = lots.map((lot) => [
    lot.lot.label,
    lot.rank === null ? 'none' : String(lot.rank),
    `${number(lot.asked, 2)} ${unitLabel(lot.priceUnit)}`,
    readingText(lot.moisture, number),
    readingText(lot.unusable, number),
    number(lot.settled.payable, 4),
    number(lot.settled.moistureClaim, 2),
    number(lot.stockPerTonne, 4),
    number(lot.cost, 2),
    number(lot.carbon, 0),
  ]);
  return figuresTable(heads, rows);
}

function readingText(
  { mean, low, high, toHalve }: PricedLot['moisture'],
  number: (value: number, decimals: number) => string,
): string {
  if (low === null || high === null) return number(mean, 2);
  const more = toHalve === null ? '' : `, ${String(toHalve)} more halve it`;
  return `${number(mean, 2)} (${number(low, 2)} to ${number(high, 2)}${more})`;
}

function walkAways({ lots }: PricedLots, locale: string): string {
  const number = (value: number): string => formatNumber(value, { locale, decimals: 2 });
  const rows = lots.map(({ lot, walkAway, priceUnit }) => [
    lot.label,
    number(walkAway.price),
    walkAway.low === null || walkAway.high === null ? '' : `${number(walkAway.low)} to ${number(walkAway.high)}`,
    walkAway.against ?? '',
    number(walkAway.virgin),
    number(walkAway.other),
    Number.isNaN(walkAway.target) ? '' : number(walkAway.target),
    unitLabel(priceUnit),
  ]);
  const heads = [
    'pay no more than',
    'price',
    'over the readings',
    'against',
    'virgin line',
    'best other lot',
    'target cost',
    'unit',
  ];
  return textTable(
    heads.map((head, place) => ({ head, holds: [0, 3, 7].includes(place) ? 'words' : 'figures' })),
    rows,
  );
}

const concessionNames = {
  moisture: 'one point of moisture',
  unusable: 'one point of unusable material',
  distance: 'ten kilometres',
  price: 'one unit of money',
} as const;

function worths({ lots }: PricedLots, locale: string): string {
  const number = (value: number): string => formatNumber(value, { locale, decimals: 2 });
  const rows = lots.flatMap(({ lot, worth }) =>
    worth.map(({ what, price, product, lot: whole }) => [
      `${lot.label}: ${concessionNames[what]}`,
      number(price),
      number(product),
      number(whole),
    ]),
  );
  return figuresTable(['worth', 'on the price', 'per t of product', 'for the lot'], rows);
}

function blendPage(found: LeastCostBlend, { lots }: PricedLots, locale: string): string {
  const labels = new Map(lots.map(({ lot }) => [lot.id, lot.label]));
  switch (found.kind) {
    case 'no lots':
      return 'No lot can be blended: none has a price and a rank today.';
    case 'unsolved':
      return `The cheapest blend could not be solved for. ${found.status}`.trim();
    case 'none':
      return blendReasonSentence(found.reasons, labels, locale);
    case 'found': {
      const cost = formatNumber(found.record.cost, { locale, decimals: 2 });
      return recordPage(`Cheapest blend within the limits: ${cost} a tonne of product`, found, labels, locale);
    }
  }
}

function givenPage(given: GivenBlend, { lots }: PricedLots, locale: string): string {
  const labels = new Map(lots.map(({ lot }) => [lot.id, lot.label]));
  if (given.kind !== 'blended') return givenBlendSentence(given, labels, locale);
  const cost = formatNumber(given.record.cost, { locale, decimals: 2 });
  return recordPage(`Blend by the shares given: ${cost} a tonne of product`, given, labels, locale);
}

function recordPage(
  title: string,
  { record, checks }: { readonly record: BlendRecord; readonly checks: readonly BlendCheck[] },
  labels: ReadonlyMap<string, string>,
  locale: string,
): string {
  const number = (value: number, decimals: number): string => formatNumber(value, { locale, decimals });
  const parts = record.parts.map(({ label, feedShare, stockShare, received }) => [
    label,
    number(100 * feedShare, 1),
    number(100 * stockShare, 1),
    number(received, 4),
  ]);
  const limits = checks.map(({ name, wanted, reached, kept }) => [
    blendLimitPhrase(name, labels),
    number(wanted, 2),
    number(reached, 2),
    kept ? 'yes' : 'NO',
  ]);
  return [
    title,
    figuresTable(['lot', '% of dry feed', '% of stock', 't as received per t'], parts),
    ...(limits.length === 0 ? [] : [figuresTable(['limit', 'set', 'comes to', 'kept'], limits)]),
  ].join('\n');
}

function notes({ lots }: PricedLots, locale: string): readonly string[] {
  const told = lots.flatMap(({ lot, notes: all }) => all.map((note) => `${lot.label}: ${lotSentence(note, locale)}`));
  return told.length === 0 ? [] : [told.join('\n')];
}
