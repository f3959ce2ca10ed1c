import { describe, expect, test } from 'vitest';
import type { PriceKind } from '../../../src/case/case.ts';
import { buildModel } from '../../../src/paper/model.ts';
import { type Evaluation, evaluated } from '../../support/evaluation.ts';
import { smallCase } from '../../support/small-case.ts';

const slush = [{ id: 'slush', like: 'pumps' }];
const priced = (kind: PriceKind, figures: Readonly<Record<string, string>>) =>
  smallCase({ stages: slush, materials: [{ price: { basis: 'as received', kind } }], figures });
const price = (figures: Readonly<Record<string, string>>): number =>
  evaluated(priced('contract', figures)).number('material.paper.netPrice');

// Source: worked by hand; the index stands at 100 a tonne. max(floor, min(cap, a x index + b)) - rebate.
describe('a contract that pays nine tenths of an index and 5 more, less a rebate of 2', () => {
  const formula = {
    'material.paper.formula.factor': '0.9 1',
    'material.paper.formula.addition': '5 EUR/t-ar',
    'material.paper.rebate': '2 EUR/t-ar',
  };

  test('pays 0.9 x 100 + 5 - 2 = 93', () => {
    expect(price(formula)).toBe(93);
  });

  test('pays 90 - 2 = 88 under a cap of 90', () => {
    expect(price({ ...formula, 'material.paper.formula.cap': '90 EUR/t-ar' })).toBe(88);
  });

  test('pays 96 - 2 = 94 above a floor of 96', () => {
    expect(price({ ...formula, 'material.paper.formula.floor': '96 EUR/t-ar' })).toBe(94);
  });

  test('keeps the floor where the cap is lower still', () => {
    const crossed = { 'material.paper.formula.floor': '96 EUR/t-ar', 'material.paper.formula.cap': '90 EUR/t-ar' };

    expect(price({ ...formula, ...crossed })).toBe(94);
  });

  test('reaches the statement: 93 over 0.9 of dry matter is 103.33 a bone-dry tonne', () => {
    expect(evaluated(priced('contract', formula)).number('mill.cost.fibre.paper').toFixed(2)).toBe('103.33');
  });
});

test('a contract without a formula pays the price that stands in it', () => {
  expect(price({})).toBe(100);
});

test('a formula belongs to a contract or an index, not to a net price', () => {
  const figures = { 'material.paper.formula.factor': '0.9 1' };
  const problems = (kind: PriceKind): readonly string[] =>
    buildModel(priced(kind, figures)).problems.map((p) => p.kind);

  expect(problems('index')).toEqual([]);
  expect(problems('net')).toEqual(['unknown input']);
  expect(problems('list')).toEqual(['unknown input']);
});

// Source: worked by hand. A lorry costs 900, a fifth of which its way back pays: 720. It may carry 25 t and has room for 90 m3.
describe('freight by the load', () => {
  const freight = (figures: Readonly<Record<string, string>>): Evaluation =>
    evaluated(
      smallCase({
        stages: slush,
        figures: {
          'material.paper.load.price': '900 EUR/load',
          'material.paper.load.backhaul': '20 %',
          'material.paper.load.payload': '25 t-ar/load',
          'material.paper.load.volume': '90 m3/load',
          ...figures,
        },
      }),
    );

  test('of dense bales is bound by weight: 720 over 25 t is 28.80 a tonne', () => {
    const dense = freight({ 'material.paper.load.baleDensity': '400 kg/m3' });

    expect(dense.number('material.paper.load.mass')).toBe(25);
    expect(dense.number('material.paper.load.freight')).toBe(28.8);
  });

  test('of loose bales is bound by room: 90 m3 x 250 kg is 22.5 t, and 32.00 a tonne', () => {
    const loose = freight({ 'material.paper.load.baleDensity': '250 kg/m3' });

    expect(loose.number('material.paper.load.mass')).toBe(22.5);
    expect(loose.number('material.paper.load.freight')).toBe(32);
    // 1 bdt is 1/0.9 t as received: 35.56 of freight for a tonne of product.
    expect(loose.number('mill.cost.freight.paper').toFixed(2)).toBe('35.56');
  });

  test('takes the place of freight by the tonne, and handling stays', () => {
    const both = freight({
      'material.paper.load.baleDensity': '250 kg/m3',
      'material.paper.freight': '50 EUR/t-ar',
      'material.paper.handling': '4 EUR/t-ar',
    });

    // (32 + 4)/0.9 = 40.
    expect(both.number('mill.cost.freight.paper')).toBeCloseTo(40, 12);
  });
});
