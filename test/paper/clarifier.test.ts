import { describe, expect, it } from 'vitest';
import { evaluated } from '../support/evaluation.ts';
import { smallCase } from '../support/small-case.ts';

// By hand: from 1 % to 10 % a washer takes out 0.909091 of the water; 99 m3 come with a bone-dry tonne, 90 m3 go to the clarifier.
describe('a clarifier', () => {
  const washed = evaluated(
    smallCase({
      stages: [{ id: 'wash', like: 'washer' }],
      figures: {
        'mill.line.wash.electricity': '18 kWh/bdt',
        'mill.line.wash.clarifierElectricity': '0.1 kWh/m3',
        'mill.line.wash.clarifierPolymer': '0.002 kg/m3',
        'chemical.sludge-polymer.price': '3 EUR/kg',
        'residue.wash.polymer': '0 kg/bdt',
      },
    }),
  );

  it('is fed with the water that the washer takes out', () => {
    expect(washed.number('mill.line.wash.filtrate')).toBeCloseTo(90, 10);
  });

  it('adds its power and its polymer to those of the washer', () => {
    const entering = washed.number('mill.line.feed');

    expect(washed.number('mill.line.wash.electricityUse') / entering).toBeCloseTo(18 + 9, 10);
    expect(washed.number('mill.cost.chemicals.sludge-polymer') / entering).toBeCloseTo(90 * 0.002 * 3, 10);
  });
});

it('prices a chemical by its solution and strength where that is what was quoted', () => {
  const mill = evaluated(
    smallCase({
      stages: [{ id: 'bleach', like: 'bleach' }],
      figures: {
        'mill.line.bleach.dose.caustic': '5 kg/bdt',
        'chemical.caustic.solutionPrice': '0.4 EUR/kg',
        'chemical.caustic.strength': '50 %',
      },
    }),
  );

  expect(mill.number('mill.cost.chemicals.caustic')).toBeCloseTo(mill.number('mill.line.feed') * 5 * 0.8, 10);
});
