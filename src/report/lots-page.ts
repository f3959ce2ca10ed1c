import type { PricedLot } from '../study/lots/priced-lot.ts';
import { formatNumber } from '../wording/number-format.ts';
import { lotSentence } from '../wording/lot-sentence.ts';
import { unitLabel } from '../wording/unit-label.ts';
import type { LotsView } from './lots-view.ts';

/** One page to lay on the table: rows of words and figures under headings. */
export interface LotsPage {
  readonly title: string;
  readonly lines: readonly string[];
  readonly tables: readonly PageTable[];
  readonly notes: readonly string[];
}

interface PageTable {
  readonly title: string;
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export interface PageChoices {
  /** The lot it is printed for. */
  readonly lot: string;
  /** Also prints what only the buyer should see: prices to walk away at, costs, and other suppliers by name. */
  readonly withLimits: boolean;
  readonly locale: string;
}

// Sentences that tell what the buyer reckons with, or what somebody else offers, stay with the buyer.
const forTheMerchant: ReadonlySet<string> = new Set([
  'single reading',
  'over tolerance',
  'expired',
  'fee received',
  'no dry matter',
  'nothing usable',
  'more than the whole',
]);

/** What was weighed, read and claimed. Other lots stand beside it without names or prices, unless the buyer's own limits are printed. */
export function lotsPage(view: LotsView, choices: PageChoices): LotsPage {
  const lot = view.lots.find((each) => each.lot.id === choices.lot);
  if (lot === undefined) return { title: '', lines: [], tables: [], notes: [] };
  const { locale, withLimits } = choices;
  return {
    title: lot.lot.label,
    lines: lot.grade === null ? [] : [`EN 643 ${lot.grade.code}, ${lot.grade.name}`],
    tables: [weighed(lot, locale), compared(view, choices), ...(withLimits ? [limits(view, locale)] : [])],
    notes: lot.notes
      .filter(({ kind }) => withLimits || forTheMerchant.has(kind))
      .map((note) => lotSentence(note, locale)),
  };
}

const figure = (value: number, decimals: number, locale: string): string => formatNumber(value, { locale, decimals });

function weighed(lot: PricedLot, locale: string): PageTable {
  const { moisture, settled, unusable, priceUnit, grade } = lot;
  const number = (value: number, decimals: number): string => figure(value, decimals, locale);
  const money = priceUnit.split('/')[0] ?? '';
  const interval =
    moisture.low === null || moisture.high === null
      ? ''
      : `${number(moisture.low, 2)} to ${number(moisture.high, 2)} (95 %, Student’s t, ${String(moisture.count)} readings)`;
  return {
    title: 'This lot',
    heads: ['', '', ''],
    rows: [
      ['Price asked', number(lot.asked, 2), unitLabel(priceUnit)],
      ['Moisture', number(moisture.mean, 2), `% ${interval}`.trim()],
      ['Unusable material', number(unusable.mean, 2), '% of dry mass'],
      ...(grade === null
        ? []
        : [
            [
              'Tolerance of the grade',
              number(Number(grade.unwanted), 2),
              `% in all, ${number(Number(grade.nonPaper), 2)} % non-paper`,
            ],
          ]),
      ['Weighed', number(Number(lot.lot.figures.tonnes ?? NaN), 2), 't'],
      ['Payable', number(settled.payable, 2), settlements[lot.lot.settlement]],
      ['Claim for wet paper', number(settled.moistureClaim, 2), unitLabel(money)],
      ...(settled.unusableClaim > 0.005
        ? [['Claim for unusable material', number(settled.unusableClaim, 2), unitLabel(money)]]
        : []),
    ],
  };
}

const settlements = {
  'as weighed': 't, as weighed',
  'dry basis': 't, settled on the dry basis',
  'point for point': 't, settled point for point',
} as const;

function compared({ lots }: LotsView, { lot: chosen, withLimits, locale }: PageChoices): PageTable {
  const number = (value: number, decimals: number): string => figure(value, decimals, locale);
  let others = 0;
  return {
    title: 'Beside other offers',
    heads: ['', 'moisture, %', 'unusable, %', 'paid t in 100', ...(withLimits ? ['asked'] : [])],
    rows: lots.map((each) => [
      each.lot.id === chosen || withLimits ? each.lot.label : `Another offer ${String((others += 1))}`,
      number(each.moisture.mean, 1),
      number(each.unusable.mean, 1),
      number(100 * each.settled.perTonne, 1),
      ...(withLimits ? [number(each.asked, 2)] : []),
    ]),
  };
}

function limits({ lots, virgin }: LotsView, locale: string): PageTable {
  const number = (value: number): string => figure(value, 2, locale);
  return {
    title: 'For the buyer only',
    heads: ['', 'pay no more than', 'cost of a tonne of product', 'rank'],
    rows: [
      ...lots.map(({ lot, walkAway, cost, rank }) => [
        lot.label,
        number(walkAway.price),
        number(cost),
        rank === null ? 'none' : String(rank),
      ]),
      ...(virgin === null ? [] : [[virgin.label, '', number(virgin.cost), '']]),
    ],
  };
}
