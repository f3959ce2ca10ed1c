import type { Lot, Lots } from '../../../src/case/lots.ts';
import { priceLots } from '../../../src/study/lots/price-lots.ts';
import type { PricedLot } from '../../../src/study/lots/priced-lot.ts';
import type { OpenCase } from '../../../src/study/open-case.ts';

export const today = '2026-09-30';

/** An invented lot: 24 t at 120 ex works, read once. */
export function lotOf(id: string, more: Partial<Lot> = {}): Lot {
  return {
    id,
    label: `Yard ${id}`,
    basis: 'as received',
    settlement: 'dry basis',
    delivery: 'ex works',
    moisture: ['11'],
    unusable: ['3'],
    ...more,
    figures: { tonnes: '24', price: '120', freight: '12', ...more.figures },
  };
}

export function pricedFor(open: OpenCase, offers: readonly Lot[], more: Partial<Lots> = {}): readonly PricedLot[] {
  const found = priceLots(open, today, { ...more, offers });
  if (found === null) throw new Error('The case has no line for lots');
  return found.lots;
}
