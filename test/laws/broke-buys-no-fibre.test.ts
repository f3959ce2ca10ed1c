import { describe, expect, test } from 'vitest';
import { type Evaluation, evaluated } from '../support/evaluation.ts';
import { smallCase } from '../support/small-case.ts';

/** A machine whose broke line gives everything back. */
function machine(broke: number, figures: Readonly<Record<string, string>>): Evaluation {
  return evaluated(
    smallCase({
      stages: [{ id: 'slush', like: 'pumps' }],
      figures: {
        'product.moisture': '8 %',
        'mill.machine.broke': `${String(broke)} %`,
        'mill.machine.brokeYield': '100 %',
        ...figures,
      },
    }),
  );
}

// Law, from G = N/(1 - b), M = G (1 - sigma)/(1 - s) and fresh furnish M - b G y with y = 1: the fresh furnish is
// M - b G = G (1 - b) + (M - G) = N + s M - sigma G. So broke changes the fibre bought only through what the wet end loses of the
// larger furnish (s M grows with G), and through the surface additives that broke brings back (sigma G), never by itself.
describe('25 % broke against 8 %, all of it given back', () => {
  test('buys the same fibre where the wet end loses nothing', () => {
    const none = { 'mill.machine.wetEndLoss': '0 %', 'mill.machine.additiveShare': '3 %' };

    const [little, much] = [machine(8, none), machine(25, none)];

    expect(much.number('mill.bought.paper')).toBeCloseTo(little.number('mill.bought.paper'), 14);
    expect(much.number('mill.bought.paper')).toBeCloseTo(0.97 * 0.92, 14);
    expect(much.number('mill.cost.fibre')).toBeCloseTo(little.number('mill.cost.fibre'), 11);
  });

  test('buys more only by what the wet end loses of the larger furnish', () => {
    // N s/(1 - s) [1/(1 - 0.25) - 1/(1 - 0.08)] = 0.92 x 0.010101 x 0.246377 = 0.002290 bdt/t, 97 % of it fibre.
    const loss = { 'mill.machine.wetEndLoss': '1 %', 'mill.machine.additiveShare': '3 %' };

    const [little, much] = [machine(8, loss), machine(25, loss)];
    const lost = (mill: Evaluation) => mill.number('mill.machine.wetEndLossMass');
    const more = much.number('mill.bought.paper') - little.number('mill.bought.paper');

    expect(more).toBeCloseTo(0.97 * (lost(much) - lost(little)), 14);
    expect(more).toBeCloseTo(0.97 * 0.92 * (0.01 / 0.99) * (1 / 0.75 - 1 / 0.92), 14);
    expect((more / 0.97).toFixed(6)).toBe('0.002290');
  });

  test('buys less by the surface starch that comes back with the broke', () => {
    const starch = { 'mill.machine.surfaceShare': '4 %', 'mill.machine.wetEndLoss': '0 %' };

    const [little, much] = [machine(8, starch), machine(25, starch)];
    const starchOf = (mill: Evaluation) => mill.number('mill.machine.surfaceAdditives');

    expect(little.number('mill.bought.paper') - much.number('mill.bought.paper')).toBeCloseTo(
      starchOf(much) - starchOf(little),
      14,
    );
  });

  test('costs more to run: more is made, dried and repulped', () => {
    const none = { 'mill.machine.wetEndLoss': '0 %' };

    const [little, much] = [machine(8, none), machine(25, none)];

    // Gross production grows by 0.92/0.75.
    for (const id of ['mill.heat.dryers', 'mill.machine.grossTonnes'])
      expect(much.number(id) / little.number(id)).toBeCloseTo(0.92 / 0.75, 12);
    expect(much.number('mill.cost.electricity.machine')).toBeGreaterThan(
      little.number('mill.cost.electricity.machine'),
    );
  });
});
