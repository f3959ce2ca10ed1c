import { describe, expect, it } from 'vitest';
import { termsAfter, tonnes } from '../../../renderer/screens/slip/price-terms.ts';

const net = { basis: 'air-dry', kind: 'net' } as const;

describe('the terms of a price', () => {
  it('can be per any of nine tonnes', () => {
    expect(tonnes.map(({ label }) => label)).toEqual([
      'per t as received',
      'per t air-dry',
      'per t bone-dry',
      'per short ton as received',
      'per short ton air-dry',
      'per short ton bone-dry',
      'per long ton as received',
      'per long ton air-dry',
      'per long ton bone-dry',
    ]);
  });

  it.each(tonnes.map(({ value }) => value))('go to "%s" and back without a trace', (tonne) => {
    const there = termsAfter(net, { tonne }, 'EUR');

    expect(`${there.basis}, ${there.ton ?? 'metric'}`).toBe(tonne);
    expect(termsAfter(there, { tonne: 'air-dry, metric' }, 'EUR')).toEqual(net);
  });

  it('name a currency only where it is not that of the case', () => {
    const abroad = termsAfter(net, { currency: 'USD' }, 'EUR');

    expect(abroad).toEqual({ ...net, currency: 'USD' });
    expect(termsAfter(abroad, { kind: 'list' }, 'EUR')).toEqual({ ...net, kind: 'list', currency: 'USD' });
    expect(termsAfter(abroad, { currency: 'EUR' }, 'EUR')).toEqual(net);
    expect(termsAfter(abroad, { currency: '' }, 'EUR')).toEqual(net);
  });
});
