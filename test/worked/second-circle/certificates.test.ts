import { describe, expect, test } from 'vitest';
import { evaluated } from '../../support/evaluation.ts';
import { smallCase } from '../../support/small-case.ts';

// Source: worked by hand, delivered tonnes x eligible share x price. The line yields all that is fed: 1 bdt, or 1/0.9 t as received.
describe('a certificate of 12 a tonne for the 60 % of a grade that is eligible', () => {
  const content = smallCase({
    stages: [{ id: 'slush', like: 'pumps' }],
    figures: { 'price.certificate': '12 EUR/t-ar', 'material.paper.certificateShare': '60 %' },
  });
  const mill = evaluated(content);

  test('earns 12 x 0.6/0.9 = 8.00 a tonne of product', () => {
    expect(mill.number('mill.recycled.certificates')).toBeCloseTo(0.6 / 0.9, 12);
    expect(mill.number('mill.cost.credits.certificates')).toBeCloseTo(-8, 12);
    expect(mill.number('mill.costPerYear.credits.certificates')).toBeCloseTo(-800_000, 6);
  });

  test('is a policy item: the cost without policy items leaves it out', () => {
    const plain = mill.withChanges({ 'price.certificate': '0' });

    expect(mill.number('mill.cost.total')).toBeCloseTo(plain.number('mill.cost.total') - 8, 10);
    expect(mill.number('mill.cost.withoutPolicy')).toBeCloseTo(plain.number('mill.cost.withoutPolicy'), 10);
  });
});

test('pulp earns no certificate, and paper beside it does for its own tonnes', () => {
  const mill = evaluated(
    smallCase({
      stages: [{ id: 'slush', like: 'pumps' }],
      materials: [
        { id: 'pulp', label: 'Pulp', origin: 'virgin' },
        { id: 'paper', label: 'Paper' },
      ],
      figures: {
        'mill.line.grade.paper.share': '25 %',
        'other.line.grade.paper.share': '0 %',
        'price.certificate': '12 EUR/t-ar',
        'material.paper.certificateShare': '100 %',
      },
    }),
  );

  // 0.25/0.9 t of paper at 12.
  expect(mill.number('mill.cost.credits.certificates')).toBeCloseTo(-(12 * 0.25) / 0.9, 12);
  expect(mill.number('other.cost.credits.certificates')).toBeCloseTo(0, 12);
});
