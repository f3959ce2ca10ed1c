import { describe, expect, test } from 'vitest';
import { type Evaluation, evaluated } from '../support/evaluation.ts';
import { smallCase } from '../support/small-case.ts';

/** A mill on natural gas that burns the film it takes out of its paper, 2 % of the dry feed. */
function burningFilm(figures: Readonly<Record<string, string>> = {}): Evaluation {
  return evaluated(
    smallCase({
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
        'fossilCarbon.lights': '2.9 tCO2/bdt',
        'mill.machine.pressDryness': '46 %',
        'mill.machine.heatPerTonneWater': '3 GJ/m3',
        'mill.machine.otherHeatPerGrossTonne': '0 GJ/gt',
        'boiler.efficiency': '90 %',
        'price.fuel': '9 EUR/GJ',
        'carbon.fuel': '56.1 kgCO2e/GJ',
        'price.carbon': '80 EUR/tCO2e',
        ...figures,
      },
    }),
  );
}

// Source: 56.1 kg CO2 per GJ of natural gas, IPCC guidelines 2006, default (from memory); 33 GJ and 2.9 t of fossil CO2 per tonne of film,
// common practice, no source. Worked by hand, for a bone-dry tonne of product:
// heat 0.54/0.46 x 3 = 3.521739 GJ. Film 0.02/0.98 = 0.020408 bdt gives 0.020408 x (33 - 2.443) x 0.8 = 0.498890 GJ.
describe('a mill that dries with gas and burns its own film', () => {
  test('saves 0.4989 GJ of boiler heat, at 10 per GJ', () => {
    expect(burningFilm().number('mill.heat.fromResidues').toFixed(4)).toBe('0.4989');
    expect(burningFilm().number('mill.cost.credits.energy').toFixed(4)).toBe('-4.9889');
  });

  test('pays for the gas that is left and for the fossil carbon of the film: 247.61 kg', () => {
    // (3.521739 - 0.498890) x 56.1/0.9 = 188.4243; 0.020408 x 2900 = 59.1837.
    expect(burningFilm().number('mill.carbon.priced').toFixed(2)).toBe('247.61');
    expect(burningFilm().number('mill.cost.carbon').toFixed(2)).toBe('19.81');
  });

  test('pays only for what is above a free allocation of 100 kg', () => {
    // 147.608 kg at 80 per tonne.
    const allocated = burningFilm({ 'mill.freeAllocation': '100 kgCO2e/t' });

    expect(allocated.number('mill.cost.carbon').toFixed(2)).toBe('11.81');
  });

  test('earns nothing from an allocation above what it emits', () => {
    expect(burningFilm({ 'mill.freeAllocation': '400 kgCO2e/t' }).number('mill.cost.carbon')).toBe(0);
  });

  test('cannot use more heat than it needs', () => {
    const small = burningFilm({ 'mill.machine.heatPerTonneWater': '0.2 GJ/m3' });

    // 0.54/0.46 x 0.2 = 0.234783 GJ, less than the film would give. Only the film's own carbon is left.
    expect(small.number('mill.heat.fromResidues').toFixed(6)).toBe('0.234783');
    expect(small.number('mill.carbon.priced').toFixed(4)).toBe('59.1837');
  });
});
