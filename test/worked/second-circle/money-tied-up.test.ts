import { describe, expect, test } from 'vitest';
import { openCase, startPlan } from '../../../src/index.ts';
import { writeCase } from '../../../src/case/write-case.ts';
import { changeInput } from '../../../src/study/open-case.ts';
import { evaluated } from '../../support/evaluation.ts';
import { smallCase } from '../../support/small-case.ts';

const content = smallCase({
  stages: [{ id: 'slush', like: 'pumps' }],
  figures: {
    'material.paper.price': '131.4 EUR/t-ar',
    'material.paper.stockDays': '20 d',
    'material.paper.creditDays': '45 d',
    'capital.tiedUpRate': '8 %',
  },
});

// Source: worked by hand. 1 bdt at 131.40/0.9 is 146 a tonne, 14.6 million a year of 100,000 t.
describe('paper of 146 a tonne, 20 days in the yard and paid after 45, at 8 %', () => {
  const mill = evaluated(content);

  test('ties up 14.6 million x 20/365 = 800,000, which costs 64,000 a year: 0.64 a tonne', () => {
    expect(mill.number('mill.capital.stock')).toBeCloseTo(800_000, 6);
    expect(mill.number('mill.costPerYear.capital.stock')).toBeCloseTo(64_000, 6);
    expect(mill.number('mill.cost.capital.stock')).toBeCloseTo(0.64, 12);
  });

  test('is spared 146 x 8 % x 45/365 = 1.44 a tonne by its supplier', () => {
    expect(mill.number('mill.capital.owed')).toBeCloseTo(1_800_000, 6);
    expect(mill.number('mill.cost.capital.owed')).toBeCloseTo(-1.44, 12);
  });
});

test('paper that a fee is received for ties nothing up', () => {
  const mill = evaluated(content).withChanges({ 'material.paper.price': '-20' });

  expect(mill.number('mill.cost.capital.stock')).toBeCloseTo(0, 12);
  expect(mill.number('mill.cost.capital.owed')).toBeCloseTo(0, 12);
});

// Source: worked by hand: 20 - 45 = 25 days owed more than held, of 14.6 million in the mill; nothing of it in the other route, whose paper is
// the same. Both routes feed the same, so that only another yield makes a difference: a fifth rejected takes 1.25 as much.
describe('the same days in an investment plan', () => {
  const wasteful = {
    ...content,
    inputs: { ...content.inputs, 'mill.line.slush.removal.fibre': { value: '20', unit: '%' } },
  };
  const opened = openCase(writeCase(wasteful));
  if (!opened.ok) throw new Error('Not a case');
  const planned = startPlan(opened.value);
  if (!planned.ok) throw new Error(JSON.stringify(planned.problems));
  const { values } = planned.value;

  test('are working capital there, project less base: a quarter of -25/365 x 14.6 million', () => {
    expect(values.number('investment.tiedUp')).toBeCloseTo(-250_000, 6);
  });

  test('are charged in no statement, so that the same money is not counted twice', () => {
    expect(values.has('mill.cost.capital.stock')).toBe(false);
    expect(values.has('other.cost.capital.owed')).toBe(false);
  });

  test('are not joined by the days of all bales', () => {
    const more = changeInput(planned.value, 'investment.stock.bales', '30');
    if (!more.ok) throw new Error('Refused');

    expect(more.value.values.number('investment.tiedUp')).toBeCloseTo(-250_000, 6);
  });
});
