import { describe, expect, test } from 'vitest';
import { evaluated } from '../support/evaluation.ts';
import { smallCase } from '../support/small-case.ts';

// Source: gate fee 26 GBP/t, median for non-hazardous landfill, "UK Gate Fees Report 2024-25", WRAP, 2025, key findings; UK landfill tax,
// standard rate from 1 April 2025, 126.15 GBP/t ("Landfill Tax: increase in rates from 1 April 2026", HM Treasury and HMRC, 2025, table). Derived: 152.15 per wet tonne, 338.11 per dry tonne at 45 % dry.
describe('sludge of 45 % dryness to a British landfill in 2025/26, before haulage', () => {
  const mill = evaluated(
    smallCase({
      currency: 'GBP',
      stages: [{ id: 'reject', like: 'pumps' }],
      destinations: [{ id: 'tip', label: 'Landfill', kind: 'landfill' }],
      figures: {
        'mill.line.reject.removal.fibre': '20 %',
        'residue.coarse.dryness': '45 %',
        'destination.tip.gateFee': '26 GBP/wet-t',
        'destination.tip.tax': '126.15 GBP/wet-t',
      },
    }),
  );
  const charged = mill.number('mill.cost.residues.coarse') + mill.number('mill.cost.residues.landfillTax');

  test('costs 152.15 per wet tonne', () => {
    expect(charged / mill.number('mill.residue.coarse.wet')).toBeCloseTo(152.15, 10);
  });

  test('costs 338.11 per dry tonne', () => {
    expect((charged / mill.number('mill.residue.coarse.dry')).toFixed(2)).toBe('338.11');
  });

  test('is dearer by the tax alone where the policy counts', () => {
    const tax = mill.number('mill.cost.total') - mill.number('mill.cost.withoutPolicy');

    expect(tax / mill.number('mill.residue.coarse.wet')).toBeCloseTo(126.15, 9);
  });
});

// Source: flotation deinking sludge of 80 to 150 kg dry per tonne of recycled pulp, "Management of wastewater treatment sludges",
// chapter abstract, undated. A loss L of the feed leaves 1000 L/(1 - L) kg/t of pulp: 8 % gives 87, 13 % gives 149.
test.each([
  { loss: '8', sludge: '87' },
  { loss: '13', sludge: '149' },
])(
  'a flotation that loses $loss % of the feed leaves $sludge kg of dry sludge per tonne of stock',
  ({ loss, sludge }) => {
    const mill = evaluated(
      smallCase({
        stages: [{ id: 'reject', like: 'pumps' }],
        figures: { 'mill.line.reject.removal.fibre': `${loss} %` },
      }),
    );

    expect((1000 * mill.number('mill.residue.coarse.dry')).toFixed(0)).toBe(sludge);
  },
);
