import { expect, it } from 'vitest';
import { evaluated } from '../support/evaluation.ts';
import { smallCase } from '../support/small-case.ts';

// A route that needs 1.1 t for the service of one: everything that follows the tonne is 1.1 times as much; what is paid by the year is not.
it('multiplies fibre, charges by the tonne and the price difference, and leaves what is paid by the year', () => {
  const mill = evaluated(
    smallCase({
      stages: [{ id: 'slush', like: 'pumps' }],
      route: {
        charges: [
          { id: 'checks', label: 'Checks', behaviour: 'per tonne', avoidable: true, nature: 'technical' },
          { id: 'rent', label: 'Rent', behaviour: 'per year', avoidable: false, nature: 'market' },
        ],
      },
      figures: {
        'mill.charge.checks': '6 EUR/t',
        'mill.charge.rent': '200000 EUR/a',
        'mill.priceDifference': '-72 EUR/t',
        'mill.machine.serviceFactor': '1.1 1',
      },
    }),
  );
  const plain = mill.withChanges({ 'mill.machine.serviceFactor': '1' });

  for (const line of ['fibre', 'charges.checks', 'productPrice', 'electricity']) {
    expect(mill.number(`mill.cost.${line}`), line).toBeCloseTo(plain.number(`mill.cost.${line}`) * 1.1, 10);
  }
  expect(mill.number('mill.cost.charges.rent')).toBe(plain.number('mill.cost.charges.rent'));
});
