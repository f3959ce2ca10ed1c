import { describe, expect, test } from 'vitest';
import { evaluated } from '../../support/evaluation.ts';
import { smallCase } from '../../support/small-case.ts';

const content = (figures: Readonly<Record<string, string>>) =>
  smallCase({
    stages: [{ id: 'slush', like: 'pumps' }],
    figures: {
      'mill.line.slush.electricity': '400 kWh/bdt',
      'other.line.slush.electricity': '150 kWh/bdt',
      'price.electricity': '0.1 EUR/kWh',
      ...figures,
    },
  });

// Source: worked by hand. The mill takes 250 kWh/t more, priced at 0.10 in its statement; at a margin of 0.16 they cost 15.00 more.
describe('250 kWh more at an average of 0.10 and a margin of 0.16', () => {
  const mill = evaluated(content({ 'price.electricityMarginal': '0.16 EUR/kWh' }));

  test('cost 25.00 in the statements, which know the average alone', () => {
    expect(mill.number('difference.cost.electricity')).toBeCloseTo(25, 10);
    expect(mill.number('difference.total')).toBe(evaluated(content({})).number('difference.total'));
  });

  test('add 15.00 to the difference where they are told at the margin', () => {
    expect(mill.number('difference.electricity')).toBeCloseTo(250, 10);
    expect(mill.number('difference.marginalPower')).toBeCloseTo(15, 10);
    expect(mill.number('difference.totalAtMarginalPower')).toBeCloseTo(mill.number('difference.total') + 15, 10);
  });

  // What both routes take alike cancels out, so that pricing everything at the margin must come to the same difference.
  test('come to the difference of two statements that buy everything at 0.16', () => {
    const all = mill.withChanges({ 'price.electricity': '0.16' });

    expect(all.number('difference.total')).toBeCloseTo(mill.number('difference.totalAtMarginalPower'), 10);
  });
});

test('a marginal price equal to the average changes nothing', () => {
  const mill = evaluated(content({ 'price.electricityMarginal': '0.1 EUR/kWh' }));

  expect(mill.number('difference.marginalPower')).toBe(0);
});

test('without a marginal price the average holds, and nothing is told beside it', () => {
  expect(evaluated(content({})).model.graph.positions.has('difference.totalAtMarginalPower')).toBe(false);
});
