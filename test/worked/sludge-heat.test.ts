import { describe, expect, test } from 'vitest';
import { bisected } from '../support/bisected.ts';
import { type Evaluation, evaluated } from '../support/evaluation.ts';
import { smallCase } from '../support/small-case.ts';

// Source: Phyllis2 database, entry 915, paper sludge (data of 1993), ECN/TNO: net calorific value 7.03 MJ/kg dry, 15.54 dry and
// ash-free, 1.64 as received; ash 54.8 % of dry; moisture 56.9 %. NCV_wet = NCV_dry d - 2.443 (1 - d), with 2.443 MJ/kg the heat
// of vaporisation of water at 25 C (from memory).

/** A mill that burns the rejects of its one stage in a boiler without losses; the heat per wet tonne is then the heat as fired. */
function burning(figures: Readonly<Record<string, string>>): Evaluation {
  return evaluated(
    smallCase({
      stages: [{ id: 'reject', like: 'pumps' }],
      destinations: [
        { id: 'tip', label: 'Tip', kind: 'landfill' },
        { id: 'boiler', label: 'Own boiler', kind: 'own boiler' },
      ],
      figures: {
        'mill.line.reject.removal.fibre': '20 %',
        'residue.coarse.to.boiler': '100 %',
        'residue.coarse.dryness': '43.1 %',
        'destination.boiler.efficiency': '100 %',
        ...figures,
      },
    }),
  );
}

function asFired(mill: Evaluation): number {
  return mill.number('mill.residue.coarse.heat') / mill.number('mill.residue.coarse.wet');
}

describe('a paper sludge of 7.03 MJ/kg dry', () => {
  const sludge = burning({ 'heatingValue.fibre': '7.03 GJ/bdt' });

  test('gives 1.640 MJ/kg wet at 56.9 % moisture', () => {
    // 7.03 x 0.431 - 2.443 x 0.569 = 3.02993 - 1.39007 = 1.63986.
    expect(asFired(sludge).toFixed(5)).toBe('1.63986');
    expect(asFired(sludge).toFixed(2)).toBe('1.64');
  });

  test('stops giving heat at 25.79 % dryness', () => {
    // 2.443 / (7.03 + 2.443) = 0.257891.
    const dryness = bisected(20, 60, (given) =>
      asFired(sludge.withChanges({ 'residue.coarse.dryness': given.toFixed(12) })),
    );

    expect(dryness / 100).toBeCloseTo(2.443 / (7.03 + 2.443), 9);
  });

  test('takes heat from the boiler when it is wetter than that', () => {
    // At 20 %: 7.03 x 0.2 - 2.443 x 0.8 = -0.5484.
    expect(asFired(sludge.withChanges({ 'residue.coarse.dryness': '20' }))).toBeCloseTo(-0.5484, 10);
  });
});

test('a sludge of 54.8 % ash whose combustible part holds 15.54 MJ/kg gives the published 1.64 MJ/kg wet', () => {
  // 15.54 x 0.452 x 0.431 - 1.39007 = 1.63727; the dry and the ash-free figures of the entry agree to rounding.
  const mill = burning({
    'material.paper.ash': '54.8 %',
    'mill.line.reject.removal.ash': '20 %',
    'heatingValue.fibre': '15.54 GJ/bdt',
  });

  expect(asFired(mill).toFixed(2)).toBe('1.64');
});

test('ash is 23.62 % of that sludge as it is hauled', () => {
  // 54.8 % x 0.431 = 23.619 %. What is left of it in the boiler is the mineral part: 54.8 % of the dry mass.
  const mill = burning({ 'material.paper.ash': '54.8 %', 'mill.line.reject.removal.ash': '20 %' });

  const share = mill.number('mill.residue.ash.dry') / mill.number('mill.residue.coarse.wet');

  expect((100 * share).toFixed(2)).toBe('23.62');
});
