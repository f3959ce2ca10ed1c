import type { LotsView } from '../../../src/index.ts';
import type { NumberStyle } from '../../numbers/number-style.ts';
import { priceText, shareText } from './lot-texts.ts';

/** The list of lots as cells to paste into a sheet. */
export function listCells({ lots }: LotsView, numbers: NumberStyle): readonly (readonly string[])[] {
  return [
    [
      'Lot',
      'rank',
      'asked',
      'moisture, %',
      'unusable, %',
      'paid t in 100',
      'pay at most',
      'cost of a tonne',
      'kg CO2e',
    ],
    ...lots.map((lot) => [
      lot.lot.label,
      lot.rank === null ? '' : String(lot.rank),
      priceText(lot.asked, numbers),
      shareText(lot.moisture.mean, numbers),
      shareText(lot.unusable.mean, numbers),
      shareText(100 * lot.settled.perTonne, numbers),
      priceText(lot.walkAway.price, numbers),
      priceText(lot.cost, numbers),
      priceText(lot.carbon, numbers, 0),
    ]),
  ];
}
