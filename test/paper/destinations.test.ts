import { describe, expect, it } from 'vitest';
import type { Destination } from '../../src/case/case.ts';
import { buildModel } from '../../src/paper/model.ts';
import { type Evaluation, evaluated } from '../support/evaluation.ts';
import { smallCase } from '../support/small-case.ts';

const boiler: Destination = { id: 'stove', label: 'Stove', kind: 'own boiler' };
const named: readonly Destination[] = [
  boiler,
  { id: 'buyer', label: 'Buyer', kind: 'sale' },
  { id: 'hole', label: 'Hole', kind: 'landfill' },
  { id: 'burner', label: 'Burner', kind: 'incineration' },
  { id: 'fields', label: 'Fields', kind: 'spreading' },
];

function screened(destinations: readonly Destination[], figures: Record<string, string> = {}): Evaluation {
  return evaluated(
    smallCase({
      destinations,
      stages: [
        { id: 'screen', like: 'fine' },
        { id: 'cone', like: 'clean-virgin' },
      ],
      figures: { 'material.paper.lights': '3 %', 'material.paper.heavies': '1 %', ...figures },
    }),
  );
}

const share = (mill: Evaluation, stream: string, destination: string): number =>
  mill.number(`mill.residue.${stream}.wet.${destination}`) / mill.number(`mill.residue.${stream}.wet`);

describe('where a residue goes when nobody says', () => {
  it('is where such a residue usually goes, whatever the destination is called and wherever it stands in the list', () => {
    const mill = screened(named);

    expect(share(mill, 'fine', 'burner')).toBe(1);
    expect(share(mill, 'cleaner', 'hole')).toBe(1);
  });

  it('is neither the own boiler nor a buyer while another place is open', () => {
    const mill = screened([
      boiler,
      { id: 'buyer', label: 'Buyer', kind: 'sale' },
      { id: 'tip', label: 'Tip', kind: 'gate-fee plant' },
    ]);

    expect(share(mill, 'fine', 'tip')).toBe(1);
  });

  it('is a problem in words where nothing takes it: boiler ash cannot go back into the boiler', () => {
    const content = smallCase({
      destinations: [boiler],
      stages: [{ id: 'screen', like: 'fine' }],
      figures: { 'material.paper.ash': '10 %' },
    });

    expect(buildModel(content).problems).toEqual([{ kind: 'missing', path: 'a destination that takes boiler ash' }]);
  });
});

// By hand: 1 t of dry fibre at 25 % dryness is 4 wet t: fired 16 - 3 x 2.443 = 8.671 GJ, 2.168 a wet tonne; 4.5 x 4 - 8.671 = 9.329 GJ are
// missing. At 76 % efficiency 0.76 x 8.671 - 0.24 x 9.329 = 4.351 GJ are useful.
describe('a residue that does not burn by itself', () => {
  const burned = (dryness: string): Evaluation =>
    screened(named, {
      'residue.fine.dryness': dryness,
      'residue.fine.to.stove': '100 %',
      'residue.fine.heatingValue': '16 GJ/bdt',
    });

  it('is charged with what the boiler loses of the fuel that keeps it burning', () => {
    const mill = burned('25 %');
    const dry = mill.number('mill.residue.fine.dry');

    expect(mill.number('mill.residue.fine.firedValue')).toBeCloseTo(2.16775, 8);
    expect(mill.number('mill.residue.fine.supportHeat') / dry).toBeCloseTo(9.329, 8);
    expect(mill.number('mill.residue.fine.heat') / dry).toBeCloseTo(4.351, 8);
  });

  it('costs nothing more where it is dry enough', () => {
    const mill = burned('60 %');

    expect(mill.number('mill.residue.fine.supportHeat')).toBe(0);
  });
});

it('gives no calorific value for a stream in which nothing comes, and spoils nothing by it', () => {
  const mill = screened(named, { 'residue.fine.to.stove': '100 %', 'material.paper.lights': '0 %' }).withChanges({
    'mill.line.screen.rejectRate': '0.000001',
  });

  expect(Number.isFinite(mill.number('mill.cost.total'))).toBe(true);
});
