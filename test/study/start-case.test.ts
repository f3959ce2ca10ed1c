import { describe, expect, it } from 'vitest';
import { readCase } from '../../src/case/read-case.ts';
import {
  type NewCase,
  caseText,
  compare,
  editStructure,
  footprint,
  lineBalance,
  problemSentence,
  productChoices,
  startCase,
} from '../../src/index.ts';
import { checksOf } from '../../src/study/checks.ts';
import { cautionsOf } from '../../src/study/warnings.ts';
import { problemsOf, valueOf } from '../examples/demonstration.ts';

const wanted = (virgin: string, recovered: string, more: Partial<NewCase> = {}): NewCase => ({
  title: 'A new case',
  virgin,
  recovered,
  tonnesPerYear: '100000',
  currency: 'EUR',
  priceYear: '2024',
  ...more,
});
const pairs = productChoices().flatMap(({ product, virgin, recovered }) =>
  virgin.flatMap((base) => recovered.map((other) => ({ product, virgin: base.id, recovered: other.id }))),
);

it('every product can be made of virgin and of recovered fibre', () => {
  expect(new Set(pairs.map(({ product }) => product)).size).toBe(6);
  for (const { virgin, recovered, moisture, machine } of productChoices()) {
    expect([virgin.length > 0, recovered.length > 0, Number(moisture) > 0, machine !== '']).toEqual(
      Array(4).fill(true),
    );
  }
});

describe.each(pairs)('a new case of $virgin against $recovered', ({ virgin, recovered }) => {
  const open = valueOf(startCase(wanted(virgin, recovered)));

  it('works out with only the tonnes given and the usual shares of the furnish', () => {
    const given = Object.keys(open.content.inputs).filter((id) => !id.endsWith('.share'));

    expect(given).toEqual(['product.tonnes']);
    expect(open.gaps).toEqual([]);
    expect(cautionsOf(open).filter(({ kind }) => kind === 'cannot be worked out')).toEqual([]);
  });

  it('keeps every law', () => {
    expect(checksOf(open).filter(({ kept }) => !kept)).toEqual([]);
  });

  it('costs something by both routes, line by line', () => {
    for (const { totals } of compare(open).routes) expect(totals.costPerTonne).toBeGreaterThan(100);
  });

  it('has a balance for each of its lines and a footprint for each of its routes', () => {
    for (const route of open.content.routes)
      for (const { id } of route.lines) expect(lineBalance(open, route.id, id)?.yield).toBeGreaterThan(0.5);
    for (const { total } of footprint(open).routes) expect(total).toBeGreaterThan(0);
  });

  it('gives shares that leave something for the balancing line', () => {
    for (const route of open.content.routes)
      expect(open.values.number(`${route.id}.${route.balance}.share`)).toBeGreaterThan(0);
  });

  it('can be written down and read again', () => {
    expect(valueOf(readCase(caseText(open)))).toEqual(open.content);
  });

  it('can be edited at once: the recovered route twice over costs the same', () => {
    const twice = valueOf(editStructure(open, { kind: 'duplicate route', route: 'recovered' }));

    expect(twice.values.exact('recovered-2.cost.total')).toBe(open.values.exact('recovered.cost.total'));
  });
});

describe('a pair of furnishes that makes no case', () => {
  it.each([
    { virgin: 'kraftliner', recovered: 'newsprint', why: 'two products' },
    { virgin: 'nothing', recovered: 'testliner', why: 'an unknown virgin furnish' },
    { virgin: 'kraftliner', recovered: '', why: 'no recovered furnish' },
  ])('is refused by name: $why', ({ virgin, recovered }) => {
    const [problem, ...more] = problemsOf(startCase(wanted(virgin, recovered)));

    expect(more).toEqual([]);
    expect(problemSentence(problem)).toContain(`"${virgin}, ${recovered}"`);
    expect(problemSentence(problem)).toContain('testliner');
  });
});

describe('a new case', () => {
  it('in another currency asks for prices, since none is converted, and starts all the same', () => {
    const open = valueOf(startCase(wanted('kraftliner', 'testliner', { currency: 'USD' })));

    expect(open.gaps.length).toBeGreaterThan(10);
    expect(open.gaps.every((gap) => gap.kind === 'no figure' && /^USD\b/u.test(gap.unit))).toBe(true);
    expect(lineBalance(open, 'recovered', 'occ')?.yield).toBeCloseTo(0.92, 2);
  });

  it.each([
    { about: 'no tonnes', told: { tonnesPerYear: '0' }, sentence: '0 t/year was given; allowed is more than 0 t/year' },
    { about: 'fewer than none', told: { tonnesPerYear: '-5' }, sentence: 'allowed is more than 0 t/year' },
    { about: 'a word for tonnes', told: { tonnesPerYear: 'many' }, sentence: '"inputs.product.tonnes.value"' },
    { about: 'no figure for tonnes', told: { tonnesPerYear: '' }, sentence: '"inputs.product.tonnes.value"' },
    {
      about: 'tonnes beyond what a file keeps',
      told: { tonnesPerYear: 'NaN' },
      sentence: '"inputs.product.tonnes.value"',
    },
    { about: 'a currency by its sign', told: { currency: '$' }, sentence: '"currency"' },
    { about: 'a year that is none', told: { priceYear: 'next' }, sentence: '"priceYear"' },
  ])('of $about is refused in a sentence, never thrown', ({ told, sentence }) => {
    const [problem, ...more] = problemsOf(startCase(wanted('kraftliner', 'testliner', told)));

    expect(more).toEqual([]);
    expect(problemSentence(problem)).toContain(sentence);
  });
});
