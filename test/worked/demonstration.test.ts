import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { compare, openCase } from '../../src/index.ts';

/**
 * Source: the demonstration case reckoned a second time, outside this program, by a short program in another language that shares no code
 * with it and follows the equations of the trade from the mill's figures straight to money. Money in EUR per tonne of product.
 */
const reckonedElsewhere = {
  virgin: {
    fibre: 620.54887,
    freight: 25.894102,
    electricity: 107.528641,
    heat: 103.391452,
    chemicals: 2.516304,
    additives: 17.380493,
    water: 12.271509,
    residues: 1.403111,
    credits: 0,
    carbon: 21.397145,
    labour: 6.458333,
    maintenance: 4.270833,
    machineFixed: 119.791667,
    productPrice: 0,
    charges: 0,
    capital: 0,
    total: 1042.85246,
  },
  recovered: {
    fibre: 398.19801,
    freight: 22.113326,
    electricity: 106.892855,
    heat: 108.719693,
    chemicals: 2.706536,
    additives: 17.380493,
    water: 13.818345,
    residues: 4.682345,
    credits: -1.37748,
    carbon: 23.08604,
    labour: 17.083333,
    maintenance: 15.416667,
    machineFixed: 119.791667,
    productPrice: 72,
    charges: 6,
    capital: 55.980824,
    total: 982.492653,
  },
} as const;

describe('the demonstration case comes to what it came to when it was reckoned elsewhere', () => {
  const opened = openCase(readFileSync('examples/demonstration.tonne', 'utf8'));
  if (!opened.ok) throw new Error('The demonstration does not open');
  const { routes, difference } = compare(opened.value);

  test.each(['virgin', 'recovered'] as const)('by the %s route, account by account', (id) => {
    const route = routes.find((each) => each.id === id);
    const found = Object.fromEntries(route?.accounts.map((account) => [account.id, account.perTonne]) ?? []);

    for (const [account, money] of Object.entries(reckonedElsewhere[id])) {
      const ours = account === 'total' ? route?.totals.costPerTonne : found[account];
      expect(ours, account).toBeCloseTo(money, 5);
    }
  });

  test('and the difference: recovered costs 60.3598 less', () => {
    expect(difference.perTonne).toBeCloseTo(-60.35980786, 7);
  });
});
