import type { Case } from '../case.ts';
import type { Lot, Lots } from '../lots.ts';

/** A change of what suppliers offer; none of these changes what the case comes to. */
export type LotsEdit =
  /** Adds a lot, or takes the place of the one with its id. */
  | { readonly kind: 'put lot'; readonly lot: Lot }
  | { readonly kind: 'remove lot'; readonly lot: string }
  /** Changes what lots are held against; what is given as null goes back to the usual. */
  | { readonly kind: 'set lots'; readonly options: LotsOptions };

export type LotsOptions = { readonly [Key in Exclude<keyof Lots, 'offers'>]?: Lots[Key] | null };

const kinds: Readonly<Record<LotsEdit['kind'], true>> = { 'put lot': true, 'remove lot': true, 'set lots': true };

export function isLotsEdit(edit: { readonly kind: string }): edit is LotsEdit {
  return Object.hasOwn(kinds, edit.kind);
}

export function withLots(content: Case, edit: LotsEdit): Case {
  const lots: Lots = content.lots ?? { offers: [] };
  switch (edit.kind) {
    case 'put lot':
      return kept(content, { ...lots, offers: put(lots.offers, edit.lot) });
    case 'remove lot':
      return kept(content, without(lots, edit.lot));
    case 'set lots': {
      const set = Object.entries({ ...lots, ...edit.options }).filter(([, value]) => value !== null);
      return kept(content, Object.fromEntries(set) as unknown as Lots);
    }
  }
}

function put(offers: readonly Lot[], lot: Lot): readonly Lot[] {
  return offers.some(({ id }) => id === lot.id)
    ? offers.map((each) => (each.id === lot.id ? lot : each))
    : [...offers, lot];
}

/** A lot that goes takes its share of the blend with it. */
function without(lots: Lots, id: string): Lots {
  const offers = lots.offers.filter((each) => each.id !== id);
  const shares = lots.blend?.shares;
  if (shares === undefined || !(id in shares)) return { ...lots, offers };
  const others = Object.fromEntries(Object.entries(shares).filter(([lot]) => lot !== id));
  return { ...lots, offers, blend: { ...lots.blend, shares: others } };
}

/** A case in which nothing is said of lots any more is one that never had any. */
function kept(content: Case, lots: Lots): Case {
  const { lots: _before, ...rest } = content;
  return lots.offers.length === 0 && Object.keys(lots).length === 1 ? rest : { ...rest, lots };
}
