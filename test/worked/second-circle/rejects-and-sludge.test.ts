import { describe, expect, test } from 'vitest';
import { footprint, openCase } from '../../../src/index.ts';
import { caseText } from '../../../src/study/case-text.ts';
import { workOut } from '../../../src/study/open-case.ts';
import { evaluated } from '../../support/evaluation.ts';
import { smallCase } from '../../support/small-case.ts';

// Source: worked by hand. A stage takes out a fifth: 0.25 bdt of coarse rejects for a tonne of product.
const content = smallCase({
  stages: [{ id: 'reject', like: 'pumps' }],
  figures: {
    'mill.line.reject.removal.fibre': '20 %',
    'residue.coarse.electricity': '40 kWh/bdt',
    'residue.coarse.polymer': '3 kg/bdt',
    'chemical.sludge-polymer.price': '4 EUR/kg',
    'price.electricity': '0.12 EUR/kWh',
  },
});

describe('a reject compactor that takes 40 kWh and 3 kg of polymer a bone-dry tonne', () => {
  const mill = evaluated(content);

  test('takes 10 kWh, at 0.12: 1.20', () => {
    expect(mill.number('mill.electricity.residues')).toBeCloseTo(10, 12);
    expect(mill.number('mill.cost.electricity.residues')).toBeCloseTo(1.2, 12);
  });

  test('takes 0.75 kg of polymer beside that of the sludge, at 4 a kilogram', () => {
    const sludge = mill.number('mill.residue.primary.dry') + mill.number('mill.residue.biological.dry');

    // Sludge takes 4 kg a bone-dry tonne by the program's list.
    expect(mill.number('mill.chemical.sludge-polymer')).toBeCloseTo(0.75 + 4 * sludge, 12);
    expect(mill.number('mill.cost.chemicals.sludge-polymer')).toBeCloseTo(4 * (0.75 + 4 * sludge), 12);
  });

  test('stands in the electricity that is needed and in its carbon', () => {
    const without = mill.withChanges({ 'residue.coarse.electricity': '0' });

    expect(mill.number('mill.electricity.total') - without.number('mill.electricity.total')).toBeCloseTo(10, 12);
    expect(mill.number('mill.footprint.power') - without.number('mill.footprint.power')).toBeCloseTo(
      10 * mill.number('carbon.grid'),
      10,
    );
  });

  test('is told as a use of energy in both routes, and uses still add up to what is needed', () => {
    const opened = workOut(content);
    if (!opened.ok) throw new Error('Not a case');
    const again = openCase(caseText(opened.value));
    if (!again.ok) throw new Error('Not a case');
    const { routes } = footprint(again.value);

    for (const route of routes) {
      const sum = route.energy.reduce((before, { electricity }) => before + electricity, 0);
      expect(route.energy.map(({ use }) => use)).toContain('rejects and sludge');
      expect(sum).toBeCloseTo(route.electricity, 9);
    }
  });
});
