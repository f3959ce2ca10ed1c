import type { PriceTerms } from '../../../src/index.ts';

export const kinds = [
  { value: 'list', label: 'list price' },
  { value: 'net', label: 'net price' },
  { value: 'contract', label: 'contract price' },
  { value: 'index', label: 'index price' },
] as const;

const bases = ['as received', 'air-dry', 'bone-dry'] as const;
const tons = ['metric', 'short', 'long'] as const;
const named = { metric: 't', short: 'short ton', long: 'long ton' } as const;

/** Every tonne that a price can be per. */
export const tonnes = tons.flatMap((ton) =>
  bases.map((basis) => ({ value: `${basis}, ${ton}`, label: `per ${named[ton]} ${basis}` })),
);

/** The terms of a price after one of them has changed; the currency of the case itself is not written down. */
export function termsAfter(
  { basis, kind, currency, ton }: PriceTerms,
  change: { readonly kind?: PriceTerms['kind']; readonly tonne?: string; readonly currency?: string },
  own: string,
): PriceTerms {
  const [newBasis, newTon] = (change.tonne ?? `${basis}, ${ton ?? 'metric'}`).split(', ');
  const money = change.currency ?? currency ?? own;
  return {
    basis: bases.find((each) => each === newBasis) ?? basis,
    kind: change.kind ?? kind,
    ...(money === own || money === '' ? {} : { currency: money }),
    ...(newTon === 'short' || newTon === 'long' ? { ton: newTon } : {}),
  };
}
