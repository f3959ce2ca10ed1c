import { describe, expect, it } from 'vitest';
import type { Caution } from '../../src/study/warnings.ts';
import { cautionSentence } from '../../src/wording/caution-sentence.ts';
import { demonstration } from '../examples/demonstration.ts';

type Told = {
  readonly [Kind in Caution['kind']]: { readonly caution: Extract<Caution, { kind: Kind }>; readonly says: string };
};

const electricity = demonstration().model.graph.inputs.find(({ id }) => id === 'price.electricity')!;
const place = { about: 'x', where: 'Mill, Line' };

/** One of every kind: a kind that is missing here does not compile. */
const everyKind: Told = {
  'freight by load': {
    caution: { kind: 'freight by load', about: 'x', material: 'Kraft', given: '35' },
    says: 'Kraft: freight is worked out by the load, so the freight given by the tonne, 35, counts for nothing.',
  },
  'list price': {
    caution: { kind: 'list price', about: 'material.bskp.price', material: 'Softwood kraft', origin: 'virgin' },
    says: 'Softwood kraft: a list price without a discount. Recovered paper is quoted as traded, so a list price makes the other route look cheaper than it is.',
  },
  'old figure': {
    caution: {
      kind: 'old figure',
      about: 'material.bskp.price',
      input: {
        id: 'material.bskp.price',
        label: 'Net price agreed',
        where: 'Softwood kraft',
        kind: 'pulp',
        date: '2026-03-03',
        months: 8,
        freshness: 'amber',
      },
    },
    says: 'Softwood kraft: price of 3 March 2026, 8 months ago; after 6 months a price of its kind is looked up again.',
  },
  'no date': {
    caution: { kind: 'no date', about: 'x', count: 5, labels: ['A', 'B', 'C', 'D', 'E'] },
    says: 'No date is given for 5 prices, so nobody can tell how fresh they are: A; B; C; D; and 1 more.',
  },
  'dates apart': {
    caution: { kind: 'dates apart', about: 'x', pulp: '2026-01-15', recovered: '2026-06-30', months: 5 },
    says: 'Prices of pulp (15 January 2026) and of recovered paper (30 June 2026) lie more than 5 months apart: they are of different markets.',
  },
  'old factors': {
    caution: { kind: 'old factors', about: 'x', count: 2, oldest: '2019', labels: ['Grid', 'Lime'] },
    says: '2 carbon factors are of more than 3 years ago, the oldest of 2019; look whether a newer set has come out: Grid; Lime.',
  },
  'wide gap': {
    caution: {
      kind: 'wide gap',
      about: 'mill.electricity.total',
      row: {
        result: 'mill.electricity.total',
        label: 'Electricity needed',
        where: 'Mill',
        unit: 'kWh/t',
        computed: 540,
        yearly: null,
        actual: null,
      },
      actual: {
        result: 'mill.electricity.total',
        value: '600',
        unit: 'kWh/t',
        period: '2025',
        computed: 540,
        symbols: 'kWh/t',
        gap: -0.1,
        isWide: true,
      },
    },
    says: 'Electricity needed (Mill): computed 540, measured 600 kWh/t (2025): 10 % below what was measured. Nothing was fitted.',
  },
  'unusual figure': {
    caution: { kind: 'unusual figure', about: 'price.electricity', input: electricity, given: '0.5' },
    says: 'Electricity: 0.5 €/kWh is outside what is usual, 0.089 to 0.276.',
  },
  'effluent below nothing': {
    caution: { kind: 'effluent below nothing', about: 'x', route: 'Mill', value: '-1.234567' },
    says: 'Mill: the water balance leaves \u22121.235 m³ of effluent a tonne, which cannot be. Fresh water is too low for what evaporates and leaves with residues.',
  },
  'unpriced additive': {
    caution: { kind: 'unpriced additive', about: 'x', route: 'Mill', place: 'wet end' },
    says: 'Mill: the machine adds something at the wet end, but no additive of the route stands for it, so it costs nothing.',
  },
  'no figure': {
    caution: { kind: 'no figure', ...place, label: 'Share', unit: '%' },
    says: 'Share (Mill, Line) has no figure yet; what is made of it cannot be worked out.',
  },
  'cannot be worked out': {
    caution: {
      kind: 'cannot be worked out',
      ...place,
      label: 'Share',
      reason: { kind: 'outside', value: '-0.15', bounds: { least: '0' } },
    },
    says: 'Share (Mill, Line) cannot be worked out: it comes to \u22120.15; possible is at least 0.',
  },
  'unusual yield': {
    caution: { kind: 'unusual yield', ...place, value: 101.23, low: 88, high: 95 },
    says: 'Mill, Line: a line yield of 101 % is outside what is usual for this product, 88 to 95 % (common practice, no source).',
  },
  'unsuited to a drum': {
    caution: { kind: 'unsuited to a drum', ...place, component: 'wire', share: 0.5 },
    says: 'Mill, Line: 0.5 % bale wire comes to the drum pulper. Wires must be off before a drum; a vat pulls them out on its rope.',
  },
  'not all written off': {
    caution: { kind: 'not all written off', about: 'investment.writtenOff.1', percent: 80 },
    says: 'The shares of the capital that the plan writes off add up to 80 %, not 100 %. What is left over is taken off the last profit.',
  },
  'limit broken': {
    caution: {
      kind: 'limit broken',
      about: 'recovered.productAsh',
      reading: {
        limit: { id: 'ash', label: 'Ash', result: 'productAsh', sense: 'at most', value: '8', unit: '%', kind: 'hard' },
        route: 'recovered',
        routeLabel: 'Recovered',
        resultId: 'recovered.productAsh',
        per: 'tonne',
        unit: '%',
        value: 9.12345,
        kept: false,
      },
    },
    says: 'Recovered: Ash comes to 9.123 %; the limit is at most 8 %.',
  },
  'no contingency': {
    caution: { kind: 'no contingency', about: 'investment.contingency' },
    says: 'The investment plan has no contingency: it takes its estimate for what will be spent. A usual allowance depends on how far the estimate has been worked out.',
  },
  'before new plant': {
    caution: { kind: 'before new plant', about: 'x', route: 'Mill' },
    says: 'Mill: no people, maintenance or capital of its line are entered, so the difference stands before any new plant.',
  },
  'burns badly': {
    caution: { kind: 'burns badly', ...place, label: 'Coarse rejects', value: 3.21 },
    says: 'Mill, Line: coarse rejects gives 3.21 GJ a wet tonne as fired; below about 4.5 it does not burn by itself and needs other fuel.',
  },
  'edge load': {
    caution: { kind: 'edge load', ...place, value: 9.876, low: 0.2, high: 4.2 },
    says: 'Mill, Line: a specific edge load of 9.88 J/m is outside what refiners are run at, 0.2 to 4.2.',
  },
  'above limit': {
    caution: { kind: 'above limit', ...place, label: 'Ash in the product', value: 12.5, limit: 10, unit: '%' },
    says: 'Mill, Line: ash in the product comes to 12.5 %; the limit set is 10.',
  },
  'below limit': {
    caution: { kind: 'below limit', ...place, label: 'Brightness of the stock', value: 68.66, limit: 70, unit: '%' },
    says: 'Mill, Line: brightness of the stock comes to 68.7 %; the limit set is 70.',
  },
  'gross refining': {
    caution: { kind: 'gross refining', ...place },
    says: 'Mill, Line: only the whole draw of this refiner is known, not its net energy, so it adds nothing to strength.',
  },
  'beyond the tiers': {
    caution: { kind: 'beyond the tiers', ...place, value: 1200, most: 1000, unit: 'bdt/a' },
    says: 'Mill, Line: 1200 bdt/year is more than the price tiers hold, 1000. What is beyond them is priced like the last tier, which may be too little.',
  },
  'set aside': {
    caution: { kind: 'set aside', about: 'x', label: 'Net price agreed', where: 'Paper', given: '-4' },
    says: 'Net price agreed (Paper) is worked out while the case says so; the figure given for it, −4, stands aside.',
  },
  'too wet to accept': {
    caution: { kind: 'too wet to accept', ...place, value: 26, limit: 25 },
    says: 'Mill, Line: moisture of 26 % is above 25 %, at which deliveries are refused.',
  },
  'heat below nothing': {
    caution: { kind: 'heat below nothing', ...place, where: 'Mill', value: -0.1234 },
    says: 'Mill: residues in the own boiler take 0.123 GJ a tonne more than they give; that heat is charged.',
  },
  'other service': {
    caution: { kind: 'other service', ...place, where: 'Mill', value: 1.1 },
    says: 'Mill makes 1.1 t for each reference tonne; every figure is per reference tonne.',
  },
  'from memory': {
    caution: { kind: 'from memory', about: 'x', count: 2, labels: ['CO2 of lime', 'Heat of fusion'] },
    says: '2 figures were recalled, not seen in a source, and must be verified before being quoted: CO2 of lime, heat of fusion.',
  },
  'too close to call': {
    caution: { kind: 'too close to call', about: 'x', difference: -21.66, doubt: 30.31 },
    says: 'Carbon: the routes differ by 21.7 kg CO2e a tonne, less than the 30.3 that the ranges of the factors leave open. Neither can be called better.',
  },
  'mixed years': {
    caution: { kind: 'mixed years', about: 'x', years: ['2023', '2025'] },
    says: 'Carbon factors of different years are used together (2023, 2025); sets of different years do not compare well.',
  },
  'mixed warming potentials': {
    caution: { kind: 'mixed warming potentials', about: 'x', wanted: 'AR6', others: ['AR4', 'AR5'], count: 5 },
    says: 'Warming potentials of AR6 are chosen, but 5 carbon factors rest on those of AR4 and AR5: the choice changes the methane of landfills alone.',
  },
  'no machine effect': {
    caution: {
      kind: 'no machine effect',
      about: 'recovered.machine.speed',
      base: { route: 'Virgin', share: 0 },
      with: { route: 'Recovered', share: 54 },
    },
    says: 'Machine effect: none entered. Virgin is 0 % recovered fibre, Recovered is 54 % recovered fibre, and both are taken to run the machine alike; breaks, speed and second quality can decide more than electricity does.',
  },
  'hours without a cost': {
    caution: { kind: 'hours without a cost', about: 'machine.extraHour', route: 'Recovered', hours: 286.4 },
    says: 'Recovered: the orders take 286 hours a year more, and nothing says what an hour costs.',
  },
  'seconds without an allowance': {
    caution: { kind: 'seconds without an allowance', about: 'machine.secondsAllowance', route: 'Recovered' },
    says: 'Recovered: part of what it makes sells as second quality, and nothing says for how much less.',
  },
  'price and contribution': {
    caution: { kind: 'price and contribution', about: 'product.contribution' },
    says: 'A price of the product and a contribution of a tonne are both given. The price is used; the contribution does nothing.',
  },
  'unsourced factors': {
    caution: { kind: 'unsourced factors', about: 'x', count: 3, of: 12 },
    says: '3 of 12 carbon factors are common practice or from memory; replace them before anything is published.',
  },
};

describe('a caution', () => {
  it.each(Object.values(everyKind))(
    'of the kind "$caution.kind" names the thing, what it is, and what is usual',
    ({ caution, says }) => {
      expect(cautionSentence(caution)).toBe(says);
    },
  );

  it('about a thing that stands for the whole case names no place', () => {
    expect(
      cautionSentence({ kind: 'no figure', about: 'product.tonnes', label: 'Tonnes', where: '', unit: 't/a' }),
    ).toBe('Tonnes has no figure yet; what is made of it cannot be worked out.');
  });

  it('says of a list price of recovered paper what it does to that paper', () => {
    expect(cautionSentence({ kind: 'list price', about: 'x', material: 'Mixed papers', origin: 'post-consumer' })).toBe(
      'Mixed papers: a list price without a discount. What a mill agrees on lies below the list, so this price makes recovered paper look dearer than it is.',
    );
  });

  it('says what the others take of a share that is to take the rest', () => {
    const reason = { kind: 'outside', value: '-0.15', bounds: { least: '0' } } as const;
    const told = (about: string) =>
      cautionSentence({ kind: 'cannot be worked out', about, label: 'Share', where: '', reason });

    for (const id of ['mill.line.share', 'mill.line.grade.occ.share', 'mill.residue.coarse.wet.landfill'])
      expect(told(id)).toBe('Share cannot be worked out: it takes what the others leave, and they already take 115 %.');
    expect(told('mill.line.shareless')).toContain('it comes to \u22120.15');
  });

  it('names the stage that leaves nothing of a line', () => {
    const reason = { kind: 'outside', value: '0', bounds: { above: '0' } } as const;

    expect(
      cautionSentence({ kind: 'cannot be worked out', ...place, label: 'Line yield', reason, emptiedBy: 'Washer' }),
    ).toBe(
      'Line yield (Mill, Line) cannot be worked out: nothing is left after "Washer", which removes all that comes to it.',
    );
  });

  it('tells bale wire and wet-strength paper apart, and what burns badly from what does not burn', () => {
    expect(cautionSentence({ kind: 'unsuited to a drum', ...place, component: 'wetStrength', share: 2.8 })).toContain(
      '2.8 % wet-strength paper comes to the drum pulper',
    );
    expect(cautionSentence({ kind: 'burns badly', ...place, label: 'Sludge', value: -1.5 })).toContain(
      'sludge is too wet to burn; as fired it takes 1.5 GJ',
    );
  });

  it('counts recalled figures, names four, and says that there are others only where there are', () => {
    const told = (labels: readonly string[]) =>
      cautionSentence({ kind: 'from memory', about: 'x', count: labels.length, labels });

    expect(told(['A'])).toBe(
      '1 figure was recalled, not seen in a source, and must be verified before being quoted: a.',
    );
    expect(told(['A', 'A', 'B'])).toMatch(/^3 figures .*: a, b\.$/u);
    expect(told(['A', 'B', 'C', 'D', 'E'])).toMatch(/: a, b, c, d and others\.$/u);
  });
});
