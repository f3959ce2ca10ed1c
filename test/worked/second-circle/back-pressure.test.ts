import { describe, expect, test } from 'vitest';
import type { Case } from '../../../src/case/case.ts';
import { type Evaluation, evaluated } from '../../support/evaluation.ts';
import { smallCase } from '../../support/small-case.ts';

/** A mill on gas that burns the film it takes out, 2 % of the dry feed; the other route is on bought heat unless said otherwise. */
function burningFilm(figures: Readonly<Record<string, string>> = {}): Case {
  return smallCase({
    stages: [{ id: 'sort', like: 'pumps' }],
    route: { heat: 'own boiler' },
    destinations: [
      { id: 'tip', label: 'Tip', kind: 'gate-fee plant' },
      { id: 'boiler', label: 'Own boiler', kind: 'own boiler' },
    ],
    figures: {
      'material.paper.lights': '2 %',
      'mill.line.sort.removal.lights': '100 %',
      'residue.coarse.to.boiler': '100 %',
      'residue.coarse.dryness': '50 %',
      'destination.boiler.efficiency': '80 %',
      'heatingValue.lights': '33 GJ/bdt',
      'mill.machine.pressDryness': '46 %',
      'mill.machine.heatPerTonneWater': '3 GJ/m3',
      'mill.machine.otherHeatPerGrossTonne': '0 GJ/gt',
      'price.electricity': '0.12 EUR/kWh',
      'carbon.fuelUpstream': '0 kgCO2e/GJ',
      ...figures,
    },
  });
}

const turbine = { 'boiler.powerToHeat': '0.3 1' };

// Source: worked by hand, kWh = sigma x heat / 0.0036 GJ. 0.02/0.98 bdt of film gives (0.02/0.98) x (33 - 2.443) x 0.8 = 0.488912/0.98 GJ of
// heat; at 0.3 of power to heat it takes 0.3 x 0.4988898/0.0036 = 41.57415 kWh of power with it.
const lostKwh = ((0.488912 / 0.98) * 0.3) / 0.0036;

describe('a mill that burns film beside a back-pressure plant', () => {
  const before = evaluated(burningFilm());
  const after = evaluated(burningFilm(turbine));

  test('buys 41.574 kWh more, at 0.12: 4.9889', () => {
    expect(after.number('mill.heat.displaced').toFixed(6)).toBe('0.498890');
    expect(after.number('mill.electricity.backPressure').toFixed(4)).toBe('41.5741');
    expect(after.number('mill.cost.electricity.backPressure').toFixed(4)).toBe('4.9889');
    expect(after.number('mill.cost.total') - before.number('mill.cost.total')).toBeCloseTo(0.12 * lostKwh, 6);
  });

  test('answers for the carbon of the grid of those kilowatt-hours, and of no others', () => {
    const power = (mill: Evaluation): number => mill.number('mill.footprint.power');
    const grid = after.number('carbon.grid');

    expect(grid).toBeGreaterThan(0);
    expect(power(after) - power(before)).toBeCloseTo(lostKwh * grid, 5);
    expect(after.number('mill.footprint.fuel')).toBe(before.number('mill.footprint.fuel'));
  });

  test('charges the loss to the way of the film as well: its heat is worth less by what it loses', () => {
    const cost = (mill: Evaluation): number => mill.number('mill.residue.coarse.wayCost');
    const carbon = (mill: Evaluation): number => mill.number('mill.residue.coarse.wayCarbon');
    const grid = after.number('carbon.grid') + after.number('carbon.gridUpstream');

    expect(cost(after) - cost(before)).toBeCloseTo(0.12 * lostKwh, 6);
    expect(carbon(after) - carbon(before)).toBeCloseTo(lostKwh * grid, 5);
  });

  test('loses nothing where nobody gave a power-to-heat ratio', () => {
    expect(before.model.graph.positions.has('mill.electricity.backPressure')).toBe(false);
  });
});

// Source: worked by hand. The other route is put on the same boiler and given 1 GJ/t more of other heat than the mill.
describe('heat that a route saves against the base route', () => {
  const shared = burningFilm({ ...turbine, 'other.machine.otherHeatPerGrossTonne': '1 GJ/gt' });
  const onBoiler: Case = { ...shared, routes: shared.routes.map((route) => ({ ...route, heat: 'own boiler' })) };
  const same = { 'other.machine.pressDryness': '46 %', 'other.machine.heatPerTonneWater': '3 GJ/m3' };
  const inputs = Object.fromEntries(
    Object.entries(same).map(([id, text]) => {
      const [value = '', unit = ''] = text.split(' ');
      return [id, { value, unit }];
    }),
  );
  // The price of bought heat is asked by no route any more.
  const { 'price.heat': _unused, ...figures } = onBoiler.inputs;
  const mill = evaluated({ ...onBoiler, inputs: { ...figures, ...inputs } });

  test('loses its power as well: 1.498890 GJ take 124.9075 kWh', () => {
    expect(mill.number('mill.heat.savedAgainstBase')).toBeCloseTo(1, 12);
    expect(mill.number('mill.electricity.backPressure').toFixed(4)).toBe('124.9075');
    expect(mill.number('other.electricity.backPressure')).toBe(0);
  });

  test('moves the difference by exactly what both routes make less of power', () => {
    // Made is sigma x the heat that the boiler raises from fuel: the difference of what is lost is that of what is made, turned round.
    const raised = (route: string): number =>
      mill.number(`${route}.heat.total`) - mill.number(`${route}.heat.fromResidues`);
    const lost = mill.number('mill.electricity.backPressure') - mill.number('other.electricity.backPressure');

    expect(lost).toBeCloseTo((0.3 / 0.0036) * (raised('other') - raised('mill')), 9);
  });
});
