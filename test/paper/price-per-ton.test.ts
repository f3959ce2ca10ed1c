import { describe, expect, it } from 'vitest';
import type { PriceTerms } from '../../src/case/case.ts';
import { changeInput, priceEcho } from '../../src/index.ts';
import { workOut } from '../../src/study/open-case.ts';
import { problemsOf, valueOf } from '../examples/demonstration.ts';
import { evaluated } from '../support/evaluation.ts';
import { smallCase } from '../support/small-case.ts';
import { after, open } from '../study/edited.ts';

const slush = [{ id: 'slush', like: 'pumps' }];
const bought = (price: PriceTerms, figures: Readonly<Record<string, string>>) =>
  smallCase({ stages: slush, materials: [{ price }], figures: { 'material.paper.moisture': '8 %', ...figures } });
const costOf = (price: PriceTerms, typed: string, more: Readonly<Record<string, string>> = {}): string =>
  evaluated(bought(price, { 'material.paper.price': typed, ...more }))
    .number('material.paper.cost')
    .toFixed(3);

// Worked by hand. Pulp at 600 in bales 92 % dry: 600/0.92 = 652.174 as received; 600/0.9 = 666.667 air-dry; 600 bone-dry;
// 600/(0.90718474 x 0.9) = 734.874 for the air-dry short ton; 600/(1.0160469088 x 0.9) = 656.138 for the long one.
describe('600 a ton, of pulp that is 92 % dry', () => {
  it.each([
    { terms: { basis: 'as received', kind: 'net' }, unit: 'EUR/t-ar', cost: '652.174' },
    { terms: { basis: 'air-dry', kind: 'net' }, unit: 'EUR/adt', cost: '666.667' },
    { terms: { basis: 'bone-dry', kind: 'net' }, unit: 'EUR/bdt', cost: '600.000' },
    { terms: { basis: 'air-dry', kind: 'net', ton: 'short' }, unit: 'EUR/adst', cost: '734.874' },
    { terms: { basis: 'air-dry', kind: 'net', ton: 'long' }, unit: 'EUR/adlt', cost: '656.138' },
  ] as const)('is $cost a bone-dry tonne where the price is in $unit', ({ terms, unit, cost }) => {
    expect(costOf(terms, `600 ${unit}`)).toBe(cost);
  });

  it('means the same whether the price is kept by the short ton or only typed by it', () => {
    expect(costOf({ basis: 'air-dry', kind: 'net' }, '600 EUR/adst')).toBe('734.874');
    expect(costOf({ basis: 'air-dry', kind: 'net', ton: 'short' }, '661.38678655463 EUR/adt')).toBe('734.874');
  });

  it('is in dollars what the rate makes of it: 734.874 at 0.92 EUR a dollar is 676.084', () => {
    const terms = { basis: 'air-dry', kind: 'net', ton: 'short', currency: 'USD' } as const;

    expect(costOf(terms, '600 USD/adst', { 'rate.USD': '0.92 EUR/USD' })).toBe('676.084');
  });

  it('takes a discount and a rebate off in its own unit: (600 x 0.9 - 20)/(0.90718474 x 0.9) = 636.891', () => {
    const terms = { basis: 'air-dry', kind: 'list', ton: 'short' } as const;
    const more = { 'material.paper.discount': '10 %', 'material.paper.rebate': '20 EUR/adst' };

    expect(costOf(terms, '600 EUR/adst', more)).toBe('636.891');
  });
});

describe('what a price means while it is typed', () => {
  const small = valueOf(workOut(bought({ basis: 'air-dry', kind: 'net' }, { 'material.paper.price': '500 EUR/adt' })));
  const echo = (typed: string) => priceEcho(small, 'material.paper.price', typed)?.perBoneDry.toFixed(2);

  it('is told per bone-dry tonne: 600 air-dry is 666.67', () => {
    expect(priceEcho(small, 'material.paper.price', '600')?.unit).toBe('EUR/bdt');
    expect(echo('600')).toBe('666.67');
    expect(echo('600 EUR/adst')).toBe('734.87');
    expect(echo('600 EUR/air-dry short ton')).toBe('734.87');
  });

  it('is not told of a bare ton, of another kind of unit, of no number, nor of what is no price of fibre', () => {
    expect(echo('600 EUR/ton')).toBeUndefined();
    expect(echo('600 EUR/t-ar')).toBeUndefined();
    expect(echo('six hundred')).toBeUndefined();
    expect(priceEcho(small, 'price.electricity', '0.1')).toBeNull();
  });

  it('changes nothing of the case', () => {
    const before = small.values.exact('material.paper.cost');
    echo('600');

    expect(small.values.exact('material.paper.cost')).toBe(before);
  });

  it('a bare ton is asked about when it is put in force', () => {
    expect(problemsOf(changeInput(small, 'material.paper.price', '600 EUR/ton'))).toMatchObject([
      { kind: 'which ton' },
    ]);
  });
});

describe('other terms of a price', () => {
  it('leave the number and change what it means', () => {
    const before = open.values.number('material.bskp.cost');
    const terms = { basis: 'air-dry', kind: 'list', ton: 'short' } as const;
    const changed = after({ kind: 'set price terms', material: 'bskp', terms });

    expect(changed.content.inputs['material.bskp.price']).toMatchObject({
      value: open.content.inputs['material.bskp.price']!.value,
      unit: 'EUR/adst',
    });
    expect(changed.values.number('material.bskp.cost')).toBeCloseTo(before / 0.90718474, 9);
  });

  it('in another currency ask for a rate, which is dropped again with the currency', () => {
    const terms = { basis: 'air-dry', kind: 'net', currency: 'USD' } as const;
    const abroad = after({ kind: 'set price terms', material: 'bskp', terms });
    const priced = valueOf(changeInput(abroad, 'rate.USD', '0.92', { date: '2026-11-03' }));
    const home = after({ kind: 'set price terms', material: 'bskp', terms: { basis: 'air-dry', kind: 'net' } }, priced);

    expect(abroad.gaps).toMatchObject([{ kind: 'no figure', id: 'rate.USD' }]);
    expect(priced.values.number('material.bskp.cost')).toBeCloseTo(open.values.number('material.bskp.cost') * 0.92, 9);
    expect(home.content).toEqual(open.content);
  });
});

// Worked by hand: of 100,000 t of bone-dry product 111,111.1 adt a year are bought, the first 100 at 600 and the rest at 540 a short ton:
// (100 x 600 + 111,011.1 x 540)/111,111.1 = 540.054 a ton, which is 540.054/(0.90718474 x 0.9) = 661.453 a bone-dry tonne.
describe('tiers of a price by the short ton', () => {
  const terms = { basis: 'air-dry', kind: 'net' } as const;
  const tiers = {
    'material.paper.tier.1.tonnes': '100 adt/a',
    'material.paper.tier.1.price': '600 EUR/adt',
    'material.paper.tier.2.tonnes': '1000000 adt/a',
    'material.paper.tier.2.price': '540 EUR/adt',
  };
  const { inputs, ...content } = bought(terms, { 'material.paper.price': '1 EUR/adt', ...tiers });
  const { 'material.paper.price': _workedOut, ...others } = inputs;
  const metric = valueOf(workOut({ ...content, inputs: others }));
  const short = after({ kind: 'set price terms', material: 'paper', terms: { ...terms, ton: 'short' } }, metric);

  it('follow it when it becomes one, while their tonnages stay metric', () => {
    expect(metric.values.number('material.paper.cost').toFixed(3)).toBe((540.054 / 0.9).toFixed(3));
    expect(short.values.number('material.paper.cost').toFixed(3)).toBe('661.453');
    expect(short.content.inputs['material.paper.tier.2.price']?.unit).toBe('EUR/adst');
    expect(short.content.inputs['material.paper.tier.2.tonnes']?.unit).toBe('adt/a');
  });

  it('count tonnes as received once the price is per such a tonne', () => {
    const wet = after(
      { kind: 'set price terms', material: 'paper', terms: { basis: 'as received', kind: 'net' } },
      metric,
    );

    expect(wet.content.inputs['material.paper.tier.2.tonnes']?.unit).toBe('t-ar/a');
  });
});
