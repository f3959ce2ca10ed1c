import { expect, it } from 'vitest';
import { evaluateDecimal } from '../../src/kernel/evaluate/decimal.ts';
import { decimalReader } from '../support/decimal-reader.ts';
import { evaluated } from '../support/evaluation.ts';
import { randomModel } from '../support/random-figures.ts';
import { smallCase } from '../support/small-case.ts';

// A route that needs 1.1 t for the service of one: everything that follows the tonne is 1.1 times as much; what is paid by the year is not,
// nor is the price difference, for what sells is the service: (T/g) price.
it('multiplies fibre, energy and charges by the tonne, and leaves the price difference and what is paid by the year', () => {
  const mill = evaluated(
    smallCase({
      stages: [{ id: 'slush', like: 'pumps' }],
      route: {
        charges: [
          { id: 'checks', label: 'Checks', behaviour: 'per tonne', avoidable: true, nature: 'technical' },
          { id: 'rent', label: 'Rent', behaviour: 'per year', avoidable: false, nature: 'market' },
        ],
      },
      figures: {
        'product.hours': '7000 h/a',
        'mill.charge.checks': '6 EUR/t',
        'mill.charge.rent': '200000 EUR/a',
        'mill.priceDifference': '-72 EUR/t',
        'mill.machine.serviceFactor': '1.1 1',
      },
    }),
  );
  const plain = mill.withChanges({ 'mill.machine.serviceFactor': '1' });

  for (const line of ['fibre', 'charges.checks', 'electricity'])
    expect(mill.number(`mill.cost.${line}`), line).toBeCloseTo(plain.number(`mill.cost.${line}`) * 1.1, 10);
  for (const line of ['charges.rent', 'productPrice'])
    expect(mill.number(`mill.cost.${line}`), line).toBe(plain.number(`mill.cost.${line}`));
});

// Water given, free allocation and the no-load power of refiners included.
it('multiplies every line that follows the tonne in 30 random cases', () => {
  for (let seed = 4101; seed <= 4130; seed += 1) {
    const { model, figures } = randomModel(seed);
    const at = (factor: string) =>
      decimalReader(model, evaluateDecimal(model.graph, new Map([...figures, ['base.machine.serviceFactor', factor]])));
    const [plain, heavier] = [at('1'), at('1.05')];
    for (const { perTonneId, behaviour, account } of model.routes[0]?.statement.lines ?? []) {
      if (account === 'machineEffect' || account === 'productPrice' || behaviour !== 'per tonne') continue;
      const expected = plain(perTonneId).times('1.05');
      const off = heavier(perTonneId).minus(expected).abs();
      expect(off.lessThanOrEqualTo(expected.abs().times('1e-27')), `seed ${String(seed)}: ${perTonneId}`).toBe(true);
    }
  }
});
