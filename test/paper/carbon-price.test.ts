import { describe, expect, it } from 'vitest';
import type { Case } from '../../src/case/case.ts';
import { type Evaluation, evaluated } from '../support/evaluation.ts';
import { smallCase } from '../support/small-case.ts';

function priced(carbonPrice: NonNullable<Case['carbonPrice']>, free: string): Evaluation {
  const content = smallCase({
    route: { heat: 'own boiler' },
    destinations: [{ id: 'hole', label: 'Own hole', kind: 'landfill', owned: true }],
    stages: [{ id: 'screen', like: 'fine' }],
    figures: {
      'price.carbon': '100 EUR/tCO2e',
      'mill.machine.otherHeatPerGrossTonne': '9 GJ/gt',
      'mill.freeAllocation': free,
    },
  });
  return evaluated({ ...content, carbonPrice });
}

describe('what the price of carbon is paid on', () => {
  const alone = priced({}, '0 kgCO2e/t');

  it('is fuel, and nothing of the own landfill or of power unless the case says so', () => {
    expect(alone.number('mill.carbon.priced')).toBeCloseTo(alone.number('mill.footprint.fuel'), 10);
  });

  it('takes in the own landfill, and power, where the case says so', () => {
    const both = priced({ ownLandfill: true, power: true }, '0 kgCO2e/t');
    const sum = ['fuel', 'ownLandfill', 'power'].reduce(
      (before, cause) => before + both.number(`mill.footprint.${cause}`),
      0,
    );

    expect(both.number('mill.footprint.ownLandfill')).toBeGreaterThan(0);
    expect(both.number('mill.carbon.priced')).toBeCloseTo(sum, 10);
  });

  it('is never below nothing, but for a surplus that is sold', () => {
    expect(priced({}, '1000 kgCO2e/t').number('mill.cost.carbon')).toBe(0);
    const sold = priced({ surplus: true }, '1000 kgCO2e/t');

    expect(sold.number('mill.cost.carbon')).toBeCloseTo((sold.number('mill.carbon.priced') - 1000) * 0.1, 10);
  });
});
