import { describe, expect, it } from 'vitest';
import { evaluated } from '../support/evaluation.ts';
import { smallCase } from '../support/small-case.ts';

const slush = [{ id: 'slush', like: 'pumps' }];

describe('a price in another currency', () => {
  // 100 EUR/t as received at 10 % moisture is 111.11 EUR/bdt; at 1.1 USD per EUR 122.22 USD/bdt.
  it('may be in euro in a case that is not', () => {
    const mill = evaluated(
      smallCase({
        currency: 'USD',
        materials: [{ price: { basis: 'as received', kind: 'net', currency: 'EUR' } }],
        stages: slush,
        figures: { 'material.paper.price': '100 EUR/t-ar', 'rate.EUR': '1.1 USD/EUR' },
      }),
    );

    expect(mill.number('material.paper.cost')).toBeCloseTo((100 / 0.9) * 1.1, 10);
  });

  it('that names the currency of the case is no foreign price and asks for no rate', () => {
    const mill = evaluated(
      smallCase({ materials: [{ price: { basis: 'as received', kind: 'net', currency: 'EUR' } }], stages: slush }),
    );

    expect(mill.model.graph.positions.has('rate.EUR')).toBe(false);
    expect(mill.number('material.paper.cost')).toBeCloseTo(100 / 0.9, 10);
  });
});

it('takes nothing for nothing in any currency: no capital, no premium, no freight', () => {
  const mill = evaluated(smallCase({ currency: 'USD', route: { capital: 'annual charge' }, stages: slush }));

  expect(mill.number('mill.cost.capital')).toBe(0);
  expect(mill.number('mill.cost.productPrice')).toBe(0);
});
