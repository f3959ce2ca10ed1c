import { describe, expect, test } from 'vitest';
import type { Settlement } from '../../src/case/case.ts';
import { type Evaluation, evaluated } from '../support/evaluation.ts';
import { smallCase } from '../support/small-case.ts';

describe('an air-dry tonne', () => {
  /** Pulp priced per air-dry tonne in bales of the dryness given. */
  const pulp = (moisture: string): Evaluation =>
    evaluated(
      smallCase({
        stages: [{ id: 'slush', like: 'pumps' }],
        materials: [{ price: { basis: 'air-dry', kind: 'net' } }],
        figures: { 'material.paper.price': '630 EUR/adt', 'material.paper.moisture': moisture },
      }),
    );

  // Source: trade definition of air-dry market pulp, 900 kg bone-dry and 100 kg water (common practice; see also ISO 801).
  test('is 0.9 bone-dry tonnes, so that 630 per air-dry tonne is 700 per bone-dry tonne', () => {
    expect(pulp('10 %').number('material.paper.payable')).toBeCloseTo(1 / 0.9, 14);
    expect(pulp('10 %').number('material.paper.cost')).toBeCloseTo(700, 10);
  });

  // Source: invoice mass = gross mass x absolute dryness / 0.9 (common practice; ISO 801 for the saleable mass).
  test('is invoiced 1.0222 times for a tonne of bales that are 92 % dry', () => {
    const bales = pulp('8 %');

    const invoiced = bales.number('material.paper.payable') / bales.number('material.paper.received');

    expect(invoiced.toFixed(4)).toBe('1.0222');
  });
});

describe('20 t of paper at 14 % moisture where 10 % was agreed', () => {
  const load = (settlement: Settlement, figures: Readonly<Record<string, string>> = {}): Evaluation =>
    evaluated(
      smallCase({
        stages: [{ id: 'slush', like: 'pumps' }],
        materials: [{ settlement }],
        figures: { 'material.paper.moisture': '14 %', ...moistureTerms[settlement], ...figures },
      }),
    );
  const agreed = { 'material.paper.moistureLimit': '10 %' };
  const moistureTerms = { 'as weighed': {}, 'dry basis': agreed, 'point for point': agreed } as const;
  const paidOf20 = (mill: Evaluation): number =>
    (20 * mill.number('material.paper.payable')) / mill.number('material.paper.received');

  // Source: worked by hand. Dry basis: 20 x 0.86/0.90 = 19.1111 t. Point for point: 20 x (1 - 0.04) = 19.2 t.
  test.each([
    { settlement: 'dry basis', paid: '19.1111' },
    { settlement: 'point for point', paid: '19.2000' },
    { settlement: 'as weighed', paid: '20.0000' },
  ] as const)('is paid for as $paid t, $settlement', ({ settlement, paid }) => {
    expect(paidOf20(load(settlement)).toFixed(4)).toBe(paid);
  });

  test('is paid for in full within a tolerance of 4 points', () => {
    expect(paidOf20(load('dry basis', { 'material.paper.moistureTolerance': '4 %' }))).toBeCloseTo(20, 12);
  });

  test('loses the whole excess once it is beyond a tolerance of 3 points', () => {
    const beyond = load('point for point', { 'material.paper.moistureTolerance': '3 %' });

    expect(paidOf20(beyond)).toBeCloseTo(19.2, 12);
  });

  test('is settled as weighed where a fee is received for taking it', () => {
    expect(paidOf20(load('dry basis', { 'material.paper.price': '-15 EUR/t-ar' }))).toBeCloseTo(20, 12);
  });

  test('carries freight on all 20 t, whatever is paid for', () => {
    // 18 per tonne as received over 0.86 bdt.
    const mill = load('dry basis', { 'material.paper.freight': '18 EUR/t-ar' });

    expect(mill.number('material.paper.freightCost')).toBeCloseTo(18 / 0.86, 12);
  });
});

// Source: five samples worked by hand: (12.1 + 13.4 + 11.8 + 14.0 + 12.7)/5 = 12.80 %; 24 x 0.872/0.90 = 23.2533 t;
// point for point 24 x (1 - 0.028) = 23.328 t.
test.each([
  { settlement: 'dry basis', paid: '23.2533' },
  { settlement: 'point for point', paid: '23.3280' },
] as const)('a lot of 24 t with five samples of mean 12.80 % is paid for as $paid t, $settlement', (claim) => {
  const mean = [12.1, 13.4, 11.8, 14.0, 12.7].reduce((sum, sample) => sum + sample, 0) / 5;
  const lot = evaluated(
    smallCase({
      stages: [{ id: 'slush', like: 'pumps' }],
      materials: [{ settlement: claim.settlement }],
      figures: { 'material.paper.moisture': `${mean.toFixed(2)} %`, 'material.paper.moistureLimit': '10 %' },
    }),
  );

  const paid = (24 * lot.number('material.paper.payable')) / lot.number('material.paper.received');

  expect(mean).toBeCloseTo(12.8, 12);
  expect(paid.toFixed(4)).toBe(claim.paid);
});

// Source: "LCA data description", FEFCO, undated, material inputs and outputs: recovered paper holds 10 % water and 5 % other
// materials by gross mass, testliner leaves with 7.9 % moisture. (1 - 0.079)/(1 - 0.10 - 0.05) = 1.0835 t, before fibre losses and starch.
test('a tonne of testliner at 7.9 % moisture needs 1.0835 t of paper with 10 % water and 5 % other materials', () => {
  const mill = evaluated(
    smallCase({
      stages: [{ id: 'sort', like: 'pumps' }],
      figures: {
        'product.moisture': '7.9 %',
        // 5 % of the gross mass is 5.5556 % of the dry mass.
        'material.paper.heavies': `${(100 * (0.05 / 0.9)).toFixed(12)} %`,
        'mill.line.sort.removal.heavies': '100 %',
      },
    }),
  );

  expect(mill.number('mill.received.paper').toFixed(4)).toBe('1.0835');
});
