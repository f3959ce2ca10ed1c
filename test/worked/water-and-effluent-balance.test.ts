import { describe, expect, test } from 'vitest';
import { type Evaluation, evaluated } from '../support/evaluation.ts';
import { smallCase } from '../support/small-case.ts';

/** A mill that rejects a tenth of its paper and doses caustic, with fresh water or effluent given. */
function mill(water: 'fresh water given' | 'effluent given', figures: Readonly<Record<string, string>>): Evaluation {
  return evaluated(
    smallCase({
      stages: [{ id: 'work', like: 'pumps' }],
      route: { water },
      figures: {
        'product.moisture': '8 %',
        'mill.machine.pressDryness': '46 %',
        'mill.machine.coolingLoss': '0.15 m3/t',
        'mill.line.work.removal.fibre': '10 %',
        'residue.coarse.dryness': '50 %',
        'mill.line.work.dose.caustic': '10 kg/bdt',
        'chemical.caustic.strength': '50 %',
        ...figures,
      },
    }),
  );
}

// Source: worked by hand, m3 (or t) of water per tonne of product. Stock 0.92 bdt at a yield of 0.9 takes 1.022222 bdt of paper.
// In: moisture 1.022222 x 0.1/0.9 = 0.113580; water of 10.22 kg caustic at half strength 0.010222; fresh water.
// Out: dryers 0.92 x (0.54/0.46 - 0.08/0.92) = 1.000000; cooling 0.15; in the residue 0.102222; in the product 0.08; effluent.
describe('the water of a tonne of product', () => {
  test('asks for 7.2084 m3 of fresh water where 6 m3 leave as effluent', () => {
    // 6 + 1 + 0.15 + 0.102222 + 0.08 - 0.113580 - 0.010222 = 7.208420.
    const given = mill('effluent given', { 'mill.effluent': '6 m3/t' });

    expect(given.number('mill.water.withMaterials').toFixed(6)).toBe('0.123802');
    expect(given.number('mill.water.elsewhere').toFixed(6)).toBe('1.332222');
    expect(given.number('mill.water.fresh').toFixed(6)).toBe('7.208420');
  });

  test('sends away 6 m3 where 7.20842 m3 of fresh water are taken', () => {
    // The same balance read the other way.
    const taken = mill('fresh water given', { 'mill.machine.freshWater': '7.20842 m3/t' });

    expect(taken.number('mill.water.effluent')).toBeCloseTo(6, 6);
  });
});

// Source: worked by hand. The wet end loses 1 % of the furnish: 1/0.99 x 0.01 = 0.010101 bdt/t, a fifth of it ash. The clarifier catches
// 85 %: 0.00858586 bdt of sludge. What is left of the organic part, 0.010101 x 0.8 x 0.15, asks 1.2 kg of oxygen per kg: 1.454545 kg.
describe('a wet-end loss of 1 %, a fifth of it ash', () => {
  const lossy = evaluated(
    smallCase({
      stages: [{ id: 'slush', like: 'pumps' }],
      figures: {
        'material.paper.ash': '20 %',
        'mill.machine.wetEndLoss': '1 %',
        'effluent.primaryCapture': '85 %',
        'effluent.demandPerOrganic': '1.2 kgCOD/kg',
        'effluent.demandRemoval': '95 %',
        'effluent.sludgeYield': '0.12 kg/kgCOD',
        'effluent.electricityPerVolume': '0.3 kWh/m3',
        'effluent.electricityPerLoad': '0.9 kWh/kgCOD',
      },
    }),
  );

  test('leaves 8.5859 kg of primary sludge, which is never oxygen demand as well', () => {
    expect((1000 * lossy.number('mill.residue.primary.dry')).toFixed(4)).toBe('8.5859');
  });

  test('leaves 1.4545 kg of oxygen demand', () => {
    expect(lossy.number('mill.effluent.rawDemand').toFixed(4)).toBe('1.4545');
  });

  test('grows 0.1658 kg of biological sludge', () => {
    // 1.454545 x 0.95 x 0.12 = 0.165818.
    expect((1000 * lossy.number('mill.residue.biological.dry')).toFixed(4)).toBe('0.1658');
  });

  test('takes 4.2436 kWh to treat with its 10 m3', () => {
    // 10 x 0.3 + 1.454545 x 0.95 x 0.9 = 4.243636.
    expect(lossy.number('mill.electricity.effluent').toFixed(4)).toBe('4.2436');
  });
});
