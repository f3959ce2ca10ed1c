import { describe, expect, test } from 'vitest';
import { buildModel } from '../../../src/paper/model.ts';
import { type Evaluation, evaluated } from '../../support/evaluation.ts';
import { smallCase } from '../../support/small-case.ts';

const ofPulp = (figures: Readonly<Record<string, string>>, origin: 'virgin' | 'post-consumer' = 'virgin') =>
  smallCase({
    stages: [{ id: 'slush', like: 'pumps' }],
    materials: [{ id: 'pulp', label: 'Pulp', origin, price: { basis: 'bone-dry', kind: 'net' } }],
    figures: {
      'mill.line.slush.electricity': '200 kWh/bdt',
      'mill.machine.electricityPerGrossTonne': '500 kWh/gt',
      'mill.machine.brokeElectricity': '0 kWh/bdt',
      'effluent.electricityPerVolume': '0 kWh/m3',
      'effluent.electricityPerLoad': '0 kWh/kgCOD',
      'mill.machine.heatPerTonneWater': '0 GJ/m3',
      'mill.machine.otherHeatPerGrossTonne': '6 GJ/gt',
      'price.electricity': '0.1 EUR/kWh',
      'price.heat': '10 EUR/GJ',
      'material.pulp.price': '600 EUR/bdt',
      ...figures,
    },
  });

// Source: worked by hand. 1 bdt of pulp makes a tonne, which needs 6 GJ and 700 kWh; the pulp mill hands over 2 GJ and 150 kWh with it.
describe('pulp of an own mill that hands over 2 GJ and 150 kWh a tonne', () => {
  const alone = evaluated(ofPulp({}));
  const joined = evaluated(
    ofPulp({ 'material.pulp.ownMill.heat': '2 GJ/bdt', 'material.pulp.ownMill.electricity': '150 kWh/bdt' }),
  );

  test('spares 20 of heat and 15 of power, as credits', () => {
    expect(joined.number('mill.cost.credits.ownMillHeat')).toBe(-20);
    expect(joined.number('mill.cost.credits.ownMillPower')).toBe(-15);
    expect(alone.number('mill.cost.total') - joined.number('mill.cost.total')).toBeCloseTo(35, 12);
  });

  test('leaves what the machine needs as it was, and buys 550 kWh of it', () => {
    expect(joined.number('mill.electricity.total')).toBe(700);
    expect(joined.number('mill.electricity.bought')).toBe(550);
    expect(joined.number('mill.heat.total')).toBe(6);
  });

  test('takes the carbon of 2 of 6 GJ and of 150 of 700 kWh with it', () => {
    const left = (id: string): number => joined.number(id) / alone.number(id);

    expect(left('mill.footprint.boughtHeat')).toBeCloseTo(4 / 6, 12);
    expect(left('mill.footprint.power')).toBeCloseTo(550 / 700, 12);
    expect(left('mill.footprint.powerSupply')).toBeCloseTo(550 / 700, 12);
  });
});

describe('more than the machine can use', () => {
  const plenty: Evaluation = evaluated(
    ofPulp({ 'material.pulp.ownMill.heat': '9 GJ/bdt', 'material.pulp.ownMill.electricity': '900 kWh/bdt' }),
  );

  test('is not sold: 6 GJ and 700 kWh are used', () => {
    expect(plenty.number('mill.heat.fromOwnMill')).toBe(6);
    expect(plenty.number('mill.electricity.fromOwnMill')).toBe(700);
    expect(plenty.number('mill.footprint.power')).toBe(0);
  });
});

test('recovered paper brings no energy of a pulp mill with it', () => {
  const content = ofPulp({ 'material.pulp.ownMill.heat': '2 GJ/bdt' }, 'post-consumer');

  expect(buildModel(content).problems.map(({ kind }) => kind)).toEqual(['unknown input']);
});

// Source: worked by hand. The other route slushes the same material, so that only a route without it goes without the energy.
test('a route that replaces half of that pulp buys half of that energy', () => {
  const content = smallCase({
    stages: [{ id: 'slush', like: 'pumps' }],
    materials: [
      { id: 'pulp', label: 'Pulp', origin: 'virgin' },
      { id: 'paper', label: 'Paper' },
    ],
    figures: {
      'mill.line.grade.paper.share': '50 %',
      'other.line.grade.paper.share': '0 %',
      'mill.machine.otherHeatPerGrossTonne': '6 GJ/gt',
      'other.machine.otherHeatPerGrossTonne': '6 GJ/gt',
      'material.pulp.ownMill.heat': '2 GJ/bdt',
    },
  });
  const both = evaluated(content);

  expect(both.number('other.heat.fromOwnMill')).toBe(2);
  expect(both.number('mill.heat.fromOwnMill')).toBe(1);
  expect(both.number('difference.cost.credits.ownMillHeat')).toBe(10);
});
