import { describe, expect, it } from 'vitest';
import { type Explanation, type OpenCase, changeInput, explain, restoreDefault } from '../../src/index.ts';
import { demonstration, valueOf } from '../examples/demonstration.ts';
import { readEquation } from '../wording/read-equation.ts';

// With a price of the product, which only a machine that is sold out needs.
const open = valueOf(changeInput(demonstration(), 'product.price', '890'));
const ids = [...open.model.graph.positions.keys()];
const explained = (id: string, from: OpenCase = open, locale?: string): Explanation => {
  const found = explain(from, id, locale);
  if (found === null) throw new Error(`No figure "${id}"`);
  return found;
};
// A contribution is only asked for where no price is given.
const all = ids.filter((id) => id !== 'product.contribution').map((id) => explained(id));
const largestIn = (numbers: string): number =>
  Math.max(...(numbers.match(/\d+(?:,\d{3})*(?:\.\d+)?/gu) ?? []).map((each) => Number(each.replaceAll(',', ''))));
const made = all.filter(({ input }) => input === null);

describe('the working of every figure of the demonstration case', () => {
  it('comes true when its numbers are reckoned again, to the six digits that a screen shows', () => {
    expect(made.length).toBeGreaterThan(1000);
    for (const { id, value, numbers } of made) {
      const reckoned = readEquation(numbers);
      // A balance that closes is shown as nothing; what is left there comes from the eighth digit of its largest term.
      const allowed = value === 0 ? 1e-7 * largestIn(numbers) : Math.abs(value) * 1e-6;
      expect(Math.abs(reckoned - value), `${id} = ${String(value)}: ${numbers}`).toBeLessThanOrEqual(allowed);
    }
  });

  it('uses the same words as numbers: every name stands where a number stands', () => {
    for (const { id, words, numbers, ingredients } of made) {
      expect(words, id).not.toBe('');
      if (ingredients.length === 0) continue;
      const operators = (text: string) =>
        text.match(/[+\u2212\u00d7\u00f7](?= )|to the power of|the lesser of|is above/gu);
      expect(operators(words), id).toEqual(operators(numbers));
    }
  });

  it('names exactly the figures it is made of', () => {
    for (const { id, words, ingredients } of made)
      for (const { label } of ingredients)
        expect(words.toLowerCase(), `${id}: ${words}`).toContain(label.toLowerCase());
  });

  it('leads down to inputs with a source, or to numbers that are fixed', () => {
    const byId = new Map(all.map((each) => [each.id, each]));
    for (const { id, input, ingredients, numbers } of all) {
      if (input !== null) {
        expect(input.source, id).not.toBe('');
        expect(ingredients, id).toEqual([]);
        continue;
      }
      // Whoever is made of nothing is a fixed number; everyone else is explained in turn.
      if (ingredients.length === 0) expect(() => readEquation(numbers), id).not.toThrow();
      for (const part of ingredients) {
        expect(byId.has(part.id), `${id} is made of ${part.id}`).toBe(true);
        expect(open.model.graph.positions.get(part.id), id).toBeLessThan(open.model.graph.positions.get(id) ?? -1);
      }
    }
  });

  it('says of each part what goes into it, and the other way round', () => {
    const byId = new Map(all.map((each) => [each.id, each]));
    for (const { id, ingredients } of all)
      for (const part of ingredients)
        expect(
          byId.get(part.id)?.goesInto.map((each) => each.id),
          `${part.id} goes into ${id}`,
        ).toContain(id);
  });

  it('carries every digit beside the number', () => {
    for (const { id, value, exact } of all) expect(Math.abs(Number(exact) - value), id).toBeLessThan(1e-25);
  });
});

describe('a working', () => {
  it('writes what nearly cancels in as many digits as the difference needs', () => {
    const { value, numbers } = explained('difference.cost.electricity');

    expect(value).toBeCloseTo(-0.6357863, 7);
    expect(readEquation(numbers)).toBeCloseTo(-0.6357863, 6);
    expect(explained('difference.cost.fibre').numbers).toMatch(/^\d{3}\.\d{4,5} \u2212 \d{3}\.\d{4,5}$/u);
  });

  it('shows a balance that closes as nothing, and the rounding that is left with every digit', () => {
    const { value, exact, ingredients } = explained('recovered.mixed.closure');

    expect(value).toBe(0);
    expect(Math.abs(Number(exact))).toBeLessThan(1e-30);
    expect(ingredients.length).toBeGreaterThan(10);
  });

  it('gives inputs with the digits that were typed', () => {
    const precise = valueOf(changeInput(open, 'price.water', '0.123456789012345'));

    expect(explained('virgin.cost.water.fresh', precise).numbers).toContain('0.123456789012345');
  });

  it('leaves out the 1 that only changes a unit, and no other', () => {
    // Dry mass is (1 - moisture) x 1 bdt/t; the yearly share of a life of 15 a is 1/15.
    expect(explained('product.dry').numbers).toBe('1 \u2212 0.08');
    const even = ['capital.rate', 'capital.inflation'].reduce((from, id) => valueOf(changeInput(from, id, '0')), open);
    expect(explained('recovered.capitalFactor', even).numbers).toMatch(/else 1 \u00f7 15$/u);
    expect(readEquation('1 \u00f7 15')).toBeCloseTo(explained('recovered.capitalFactor', even).value, 12);
  });

  it('says that nothing is there where no part of a cost is', () => {
    expect(explained('virgin.cost.heat.stock')).toMatchObject({
      value: 0,
      words: 'nothing: no part of it is there',
      numbers: '0',
      ingredients: [],
    });
  });

  it('is written as people of a region write numbers, the fixed ones too', () => {
    expect(explained('virgin.cost.carbon.carbon', open, 'de-DE').numbers).toContain('0,001');
    expect(explained('product.perHour', open, 'de-DE').numbers).toBe('96.000 \u00f7 8.150');
    expect(explained('product.perHour', open, 'de-CH').numbers).toMatch(/^96['\u2019]000 \u00f7 8['\u2019]150$/u);
  });

  it('of an input is the input itself', () => {
    expect(explained('price.electricity')).toMatchObject({
      words: '',
      numbers: '',
      ingredients: [],
      failure: null,
      input: { value: '0.118', unit: 'EUR/kWh', touched: true },
    });
  });

  it('of a figure that there is not is none', () => {
    expect(explain(open, 'nothing')).toBeNull();
  });
});

describe('a working that fails', () => {
  it('says what has no figure, also far from it', () => {
    const gap = valueOf(restoreDefault(open, 'recovered.mixed.share'));
    const { failure, value, exact, numbers } = explained('difference.total', gap);

    expect(failure).toBe(
      'Share of the dry fresh stock (Recovered middle ply, Mixed papers and boards) has no figure yet.',
    );
    expect([value, exact]).toEqual([NaN, '']);
    expect(numbers).toBe('not yet \u2212 1,042.852');
  });

  it('says what cannot be, and of what', () => {
    const over = valueOf(changeInput(open, 'virgin.bskp.share', '95'));

    expect(explained('virgin.cost.total', over).failure).toBe(
      'Share of the dry fresh stock (Virgin middle ply, Bleached chemi-thermomechanical) cannot be worked out: it takes what the others leave, and they already take 115 %.',
    );
    expect(explained('recovered.cost.total', over).failure).toBeNull();
  });
});
