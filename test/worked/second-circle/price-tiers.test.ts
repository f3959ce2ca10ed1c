import { describe, expect, test } from 'vitest';
import type { Material } from '../../../src/case/case.ts';
import { writeCase } from '../../../src/case/write-case.ts';
import { type OpenCase, changeInput, openCase } from '../../../src/study/open-case.ts';
import { statementPage } from '../../../src/report/statement-page.ts';
import { spreadOf } from '../../../src/report/spread-view.ts';
import { compare } from '../../../src/study/comparison.ts';
import { tieredPrices } from '../../../src/study/tiered-prices.ts';
import { cautionsOf } from '../../../src/study/warnings.ts';
import { cautionSentence } from '../../../src/wording/caution-sentence.ts';
import { valueOf } from '../../examples/demonstration.ts';
import { smallCase } from '../../support/small-case.ts';

const tiers = {
  'material.paper.tier.1.tonnes': '40000 t-ar/a',
  'material.paper.tier.1.price': '120 EUR/t-ar',
  'material.paper.tier.2.tonnes': '30000 t-ar/a',
  'material.paper.tier.2.price': '140 EUR/t-ar',
  'material.paper.tier.3.tonnes': '30000 t-ar/a',
  'material.paper.tier.3.price': '165 EUR/t-ar',
};

/** A mill that makes so many tonnes a year, each of one bone-dry tonne of paper that comes without moisture. */
function buying(
  tonnes: string,
  figures: Readonly<Record<string, string>> = {},
  material: Partial<Material> = {},
): OpenCase {
  const content = smallCase({
    stages: [{ id: 'slush', like: 'pumps' }],
    materials: [material],
    figures: { 'material.paper.moisture': '0 %', ...tiers, 'product.tonnes': `${tonnes} t/a`, ...figures },
  });
  return valueOf(openCase(writeCase(content)));
}

const fibre = (open: OpenCase): number => open.values.number('mill.cost.fibre');
const sentences = (open: OpenCase): readonly string[] => cautionsOf(open).map(cautionSentence);
const ofTiers = (open: OpenCase): readonly string[] => sentences(open).filter((each) => each.includes('tiers'));

// Worked by hand: 40 kt at 120, 30 at 140 and 30 at 165.
describe('a price by tiers', () => {
  test('is 139.50 on average for all 100 000 t, while the last tonne costs 165', () => {
    // (40 x 120 + 30 x 140 + 30 x 165) / 100 = 13 950 / 100.
    const open = buying('100000');

    expect(open.values.number('mill.bought.paper.tonnage')).toBe(100_000);
    expect(open.values.exact('mill.bought.paper.averagePrice')).toBe('139.5');
    expect(open.values.exact('mill.bought.paper.marginalPrice')).toBe('165');
    expect(fibre(open)).toBe(139.5);
    expect(open.values.number('mill.bought.paper.marginalCost')).toBe(165);
    expect(ofTiers(open)).toEqual([]);
  });

  test.each([
    ['40000', 120, 120],
    // (40 x 120 + 10 x 140) / 50 = 124.
    ['50000', 124, 140],
    ['70000', 9000 / 70, 140],
    ['10000', 120, 120],
  ])('for %s t is %d on average and %d for the last tonne', (tonnes, average, marginal) => {
    const open = buying(tonnes);

    expect(fibre(open)).toBeCloseTo(average, 9);
    expect(open.values.number('mill.bought.paper.marginalPrice')).toBe(marginal);
  });

  test('goes on at the last price beyond the tiers, with a warning: 143.75 for 120 000 t', () => {
    // (13 950 + 20 x 165) / 120.
    const open = buying('120000');

    expect(fibre(open)).toBe(143.75);
    expect(ofTiers(open)).toContain(
      'Mill, Paper: 120000 t as received/year is more than the price tiers hold, 100000. What is beyond them is priced like the last tier, which may be too little.',
    );
  });

  test('counts delivered tonnes: at 10 % moisture 45 000 t of product take 50 000', () => {
    const open = buying('45000', { 'material.paper.moisture': '10 %' });

    expect(open.values.number('mill.bought.paper.tonnage')).toBeCloseTo(50_000, 6);
    // 124 a tonne as received is 124 / 0.9 a bone-dry tonne.
    expect(fibre(open)).toBeCloseTo(124 / 0.9, 9);
  });

  test('counts air-dry tonnes where the price is per air-dry tonne', () => {
    const perAirDry = Object.fromEntries(
      Object.entries({ ...tiers, 'material.paper.price': '100 EUR/t-ar' }).map(([id, text]) => [
        id,
        text.replace('t-ar', 'adt'),
      ]),
    );
    const open = buying('45000', perAirDry, { price: { basis: 'air-dry', kind: 'net' } });

    expect(open.values.number('mill.bought.paper.averagePrice')).toBeCloseTo(124, 9);
    expect(fibre(open)).toBeCloseTo(124 / 0.9, 9);
  });

  test('is reckoned with settlement point for point as any other price', () => {
    const open = buying('45000', { 'material.paper.moisture': '12 %' }, { settlement: 'point for point' });

    // 45 000 / 0.88 = 51 136.4 t: (4800 + 11.13636 x 140) / 51.13636 = 124.3556; 98 % of 1/0.88 is paid.
    expect(fibre(open)).toBeCloseTo((124.355556 * 0.98) / 0.88, 4);
  });

  test('takes a discount off every tier', () => {
    expect(fibre(buying('100000', { 'material.paper.discount': '10 %' }))).toBeCloseTo(125.55, 9);
  });

  test('works the price of the material out, and says that the figure given for it stands aside', () => {
    const open = buying('100000');

    expect(open.values.number('material.paper.price')).toBe(139.5);
    expect(open.values.number('material.paper.cost')).toBe(139.5);
    expect(sentences(open)).toContain(
      'Net price agreed (Paper) is worked out while the case says so; the figure given for it, 100, stands aside.',
    );
    expect(changeInput(open, 'material.paper.price', '110')).toMatchObject({
      ok: false,
      problems: [{ kind: 'worked out', id: 'material.paper.price' }],
    });
  });

  test('asks for the price of a tier whose tonnes are given', () => {
    const open = buying('100000', { 'material.paper.tier.4.tonnes': '5000 t-ar/a' });

    expect(open.gaps.map((gap) => ('id' in gap ? gap.id : ''))).toEqual(['material.paper.tier.4.price']);
  });

  test('of another currency is turned into money of the case', () => {
    const inDollars = Object.fromEntries(
      Object.entries({ ...tiers, 'material.paper.price': '100 EUR/t-ar' }).map(([id, text]) => [
        id,
        text.replace('EUR', 'USD'),
      ]),
    );
    const open = buying(
      '100000',
      { ...inDollars, 'rate.USD': '0.9 EUR/USD' },
      { price: { basis: 'as received', kind: 'net', currency: 'USD' } },
    );

    expect(fibre(open)).toBeCloseTo(139.5 * 0.9, 9);
  });
});

describe('a case that asks what-ifs about a price', () => {
  test('is not turned over to tiers behind the back of a scenario: it is told which price takes no figure', () => {
    const scenario = {
      id: 'dear',
      label: 'Dear paper',
      inputs: { 'material.paper.price': { value: '150', unit: 'EUR/t-ar' } },
    };
    const content = smallCase({ stages: [{ id: 'slush', like: 'pumps' }], figures: tiers });
    const refused = openCase(writeCase({ ...content, scenarios: [scenario] }));

    expect(refused.ok ? [] : refused.problems).toEqual([{ kind: 'worked out', id: 'material.paper.price' }]);
  });
});

describe('the statement in the terminal', () => {
  test('tells the average and the price of the last tonne', () => {
    const open = buying('100000');
    const page = statementPage(compare(open), spreadOf(open), 'en', null, tieredPrices(open));

    expect(page).toContain(
      'Price tiers, Mill: Paper, 100,000 t as received/year at 139.50 €/t as received on average; the last tonne costs 165.00.',
    );
  });
});
