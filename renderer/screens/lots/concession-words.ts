import type { PricedLot } from '../../../src/index.ts';
import type { NumberStyle } from '../../numbers/number-style.ts';
import { priceText } from './lot-texts.ts';

/** What a concession is worth: "1 point of moisture is worth 0.17 €/t". */
export function concessionWords({ what, price, product }: PricedLot['worth'][number], numbers: NumberStyle): string {
  const worth = `${priceText(price, numbers)} ${numbers.symbol}/t`;
  switch (what) {
    case 'moisture':
      return `1 point of moisture is worth ${worth}`;
    case 'unusable':
      return `1 point of unusable material ${worth}`;
    case 'distance':
      return `10 km ${worth}`;
    case 'price':
      return `1 ${numbers.symbol}/t is ${priceText(product, numbers)} ${numbers.symbol} on a tonne of product`;
  }
}
