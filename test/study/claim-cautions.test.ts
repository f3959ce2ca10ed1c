import { describe, expect, it } from 'vitest';
import type { Case, GivenInput } from '../../src/case/case.ts';
import { type OpenCase, changeInput, editStructure, footprint, problemSentence, startCase } from '../../src/index.ts';
import { carbonFactor } from '../../src/paper/carbon-factors.ts';
import { type ClaimCaution, claimCautions } from '../../src/study/claim-cautions.ts';
import { workOut } from '../../src/study/open-case.ts';
import { claimCautionSentence } from '../../src/wording/claim-caution-sentence.ts';
import { problemsOf, valueOf } from '../examples/demonstration.ts';

const start = (virgin: string, recovered: string): OpenCase =>
  valueOf(
    startCase({ title: 'A claim', virgin, recovered, tonnesPerYear: '100000', currency: 'EUR', priceYear: '2024' }),
  );
const testliner = start('kraftliner', 'testliner');

function ofKind<Kind extends ClaimCaution['kind']>(open: OpenCase, kind: Kind) {
  return claimCautions(open).filter((each): each is Extract<ClaimCaution, { kind: Kind }> => each.kind === kind);
}

const sourced = { status: 'read', source: 'Supplier declaration, 2026' } as const;
const given = (open: OpenCase, figures: Readonly<Record<string, GivenInput>>) => {
  const content: Case = { ...open.content, inputs: { ...open.content.inputs, ...figures } };
  return workOut(content);
};
const withPulp = (value: string, status: 'measured' | 'read' | 'derived' = 'derived'): OpenCase =>
  valueOf(changeInput(testliner, 'material.ukp.carbon', value, { ...sourced, status }));

/** The doubt worked out anew: every factor to the ends of its range alone, half the swings as squares. */
function doubtOf(open: OpenCase): number {
  const factors = open.model.graph.inputs.filter(({ usual }) => usual.provenance.details?.['boundary'] !== undefined);
  const squares = factors.map(({ id, usual, entryUnit }) => {
    const at = (figure: string | null): number =>
      valueOf(given(open, { [id]: { value: figure ?? '', unit: entryUnit, ...sourced } })).values.number(
        'difference.footprint.total',
      );
    return ((at(usual.high) - at(usual.low)) / 2) ** 2;
  });
  return Math.sqrt(squares.reduce((sum, square) => sum + square, 0));
}

describe('a difference in carbon', () => {
  it('within the doubt of the factors is too close to call, with both told', () => {
    const [caution] = ofKind(testliner, 'too close to call');

    expect(caution?.difference).toBe(testliner.values.number('difference.footprint.total'));
    expect(Math.abs(caution?.difference ?? NaN)).toBeLessThan(caution?.doubt ?? NaN);
    expect(claimCautionSentence(caution!)).toMatch(
      /differ by 174 kg CO2e .* less than the 195 .* Neither can be called better/u,
    );
  });

  it('is held against a doubt that can be worked out by hand', () => {
    const [caution] = ofKind(testliner, 'too close to call');

    expect(caution?.doubt).toBeCloseTo(doubtOf(testliner), 6);
  });

  it('grows out of it where the pulp is dirtier, and falls back into it where it is cleaner', () => {
    expect(ofKind(withPulp('600'), 'too close to call')).toEqual([]);
    expect(ofKind(withPulp('120'), 'too close to call')).toHaveLength(1);
  });

  describe('where the carbon of the pulp is replaced', () => {
    const doubtWith = (status: 'measured' | 'read' | 'derived', value: string): number => {
      return ofKind(withPulp(value, status), 'too close to call')[0]?.doubt ?? NaN;
    };
    const pulp = testliner.model.graph.inputs.find(({ id }) => id === 'material.ukp.carbon')!.usual;
    const [before] = ofKind(testliner, 'too close to call');
    const slope =
      withPulp('101').values.number('difference.footprint.total') -
      withPulp('100').values.number('difference.footprint.total');
    const ofPulp = (slope * (Number(pulp.high) - Number(pulp.low))) / 2;
    const ofOthers = Math.sqrt((before?.doubt ?? NaN) ** 2 - ofPulp ** 2);

    // The figure at which the routes are level, so that whatever doubt is left is told.
    const level = Number(pulp.value) - (before?.difference ?? NaN) / slope;

    it('leaves no doubt of its own if it was measured or read', () => {
      expect(doubtWith('measured', String(level))).toBeCloseTo(ofOthers, 6);
      expect(doubtWith('read', String(level))).toBeCloseTo(ofOthers, 6);
    });

    it('is in doubt by its range in proportion if it was neither', () => {
      const share = level / Number(pulp.value);

      expect(doubtWith('derived', String(level))).toBeCloseTo(Math.hypot(ofOthers, ofPulp * share), 6);
    });
  });

  it('is no close call between a route and its own copy, where no factor leaves anything open', () => {
    const twice = valueOf(editStructure(testliner, { kind: 'duplicate route', route: 'recovered' }));
    const faced = valueOf(editStructure(twice, { kind: 'compare routes', base: 'recovered', with: 'recovered-2' }));

    expect(ofKind(faced, 'too close to call')).toEqual([]);
  });
});

describe('years of factors', () => {
  const inputs = testliner.model.graph.inputs;
  const yearOf = (id: string): string =>
    inputs.find((input) => input.id === id)?.usual.provenance.details?.['year'] ?? '';

  it('that are mixed are named, oldest first', () => {
    const [caution] = ofKind(testliner, 'mixed years');

    expect(caution?.years).toEqual(['2006', '2023', '2024', '2025']);
    expect(claimCautionSentence(caution!)).toContain('2006, 2023, 2024, 2025');
  });

  it('count that of a figure given with its year', () => {
    const [caution] = ofKind(
      valueOf(changeInput(testliner, 'material.ukp.carbon', '300', { ...sourced, year: '2019' })),
      'mixed years',
    );

    expect(caution?.years).toContain('2019');
  });

  it('leave out the grid at the margin, which no inventory uses', () => {
    const french = valueOf(editStructure(testliner, { kind: 'set basis', basis: { grid: 'FRA' } }));
    const replaced: Record<string, GivenInput> = {};
    for (const { id, usual, entryUnit } of french.model.graph.inputs)
      if (id !== 'carbon.gridMarginal' && usual.provenance.details?.['year'] !== undefined)
        replaced[id] = { value: usual.value ?? '0', unit: entryUnit, ...sourced, year: '1999' };

    expect(french.values.has('carbon.gridMarginal')).toBe(true);
    expect(ofKind(valueOf(given(french, replaced)), 'mixed years')).toEqual([]);
  });

  it('are of one set where every factor of another year is replaced', () => {
    const others = inputs.filter(({ id }) => !['', '2025'].includes(yearOf(id)));
    const replaced = Object.fromEntries(
      others.map(({ id, usual, entryUnit }) => [id, { value: usual.value ?? '0', unit: entryUnit, ...sourced }]),
    );

    expect(others.length).toBeGreaterThanOrEqual(3);
    expect(ofKind(valueOf(given(testliner, replaced)), 'mixed years')).toEqual([]);
  });

  it('are not asked of warming potentials and of decay, which belong to no set', () => {
    const timeless = inputs.filter(({ id }) => id.startsWith('landfill.'));
    const replaced = Object.fromEntries(
      timeless.map(({ id, usual, entryUnit }) => [id, { value: usual.value ?? '0', unit: entryUnit, ...sourced }]),
    );

    expect(timeless.length).toBeGreaterThan(6);
    expect(ofKind(valueOf(given(testliner, replaced)), 'mixed years')).toEqual(ofKind(testliner, 'mixed years'));
  });
});

describe('warming potentials', () => {
  const basedOn = (gwp: 'AR5' | 'AR6') => valueOf(editStructure(testliner, { kind: 'set basis', basis: { gwp } }));

  it('of one set are not remarked on', () => {
    expect(ofKind(basedOn('AR5'), 'mixed warming potentials')).toEqual([]);
  });

  it('of another set than the one chosen are counted and named', () => {
    const [caution] = ofKind(basedOn('AR6'), 'mixed warming potentials');
    const ofAr5 = basedOn('AR6').model.graph.inputs.filter(({ usual }) => usual.provenance.details?.['gwp'] === 'AR5');

    expect(caution).toMatchObject({ wanted: 'AR6', others: ['AR5'], count: ofAr5.length });
    expect(ofAr5.length).toBeGreaterThan(2);
  });

  it('of a figure that was given count too, where it says which', () => {
    const told = (more: object) =>
      ofKind(
        valueOf(changeInput(testliner, 'material.ukp.carbon', '300', { ...sourced, ...more })),
        'mixed warming potentials',
      );

    expect(told({})).toEqual([]);
    expect(told({ gwp: 'AR4' })).toMatchObject([{ others: ['AR4'], count: 1 }]);
  });
});

describe('factors without a source to quote', () => {
  const [before] = ofKind(testliner, 'unsourced factors');
  const after = (status: 'read' | 'practice') =>
    ofKind(
      valueOf(changeInput(testliner, 'material.ukp.carbon', '300', { status, source: 'A letter' })),
      'unsourced factors',
    )[0];

  it('are counted, of all that are used', () => {
    expect(before?.count).toBeGreaterThan(5);
    expect(before?.of).toBeGreaterThan(before?.count ?? NaN);
    expect(claimCautionSentence(before!)).toMatch(/^\d+ of \d+ carbon factors are common practice or from memory/u);
  });

  it('are one fewer where one was read somewhere, and as many where the new one is common practice too', () => {
    expect(after('read')).toMatchObject({ count: (before?.count ?? NaN) - 1, of: before?.of });
    expect(after('practice')).toEqual(before);
  });
});

describe('a factor that somebody gives', () => {
  it.each(['carbon.grid', 'material.ukp.carbon', 'carbon.freight.road', 'landfill.gwp', 'carbon.burning'])(
    'is refused without a source: %s',
    (id) => {
      const [problem, ...more] = problemsOf(changeInput(testliner, id, '5'));

      expect(more).toEqual([]);
      expect(problem.kind).toBe('no source');
      expect(problemSentence(problem)).toContain(id);
      expect(changeInput(testliner, id, '5', sourced).ok).toBe(true);
    },
  );

  it('is refused with nothing but blanks for a source', () => {
    const [problem] = problemsOf(changeInput(testliner, 'carbon.grid', '0.5', { status: 'read', source: '  ' }));

    expect(problem.kind).toBe('no source');
  });

  it.each([
    { id: 'carbon.burning', key: 'refused.incineration-haulage', wanted: 'treatment', unit: 'kgCO2e/wet-t' },
    { id: 'carbon.spreading', key: 'freight.road', wanted: 'treatment', unit: 'kgCO2e/wet-t' },
    {
      id: 'material.occ.carbon',
      key: 'refused.recycling-haulage',
      wanted: 'collection and sorting',
      unit: 'kgCO2e/t-ar',
    },
    {
      id: 'material.occ.carbon',
      key: 'refused.closed-loop-board',
      wanted: 'collection and sorting',
      unit: 'kgCO2e/t-ar',
    },
    { id: 'carbon.grid', key: 'electricity.upstream', wanted: 'generation of electricity', unit: 'kgCO2e/kWh' },
  ])('is refused by name where it takes in something else: $key for $id', ({ id, key, wanted, unit }) => {
    const { value, boundary } = carbonFactor(key);
    const figure = { value, unit, ...sourced };

    const [problem, ...more] = problemsOf(given(testliner, { [id]: { ...figure, boundary } }));

    expect(more).toEqual([]);
    expect(problem).toMatchObject({ kind: 'wrong boundary', id, given: boundary, wanted });
    expect(problemSentence(problem)).toContain(`takes in ${boundary} and cannot stand for it`);
    expect(given(testliner, { [id]: { ...figure, boundary: wanted } }).ok).toBe(true);
  });

  it('is refused for both at once, where it has neither source nor boundary', () => {
    const figure = { value: '5', unit: 'kgCO2e/wet-t', boundary: 'transport only' };
    const kinds = problemsOf(given(testliner, { 'carbon.burning': figure })).map(({ kind }) => kind);

    expect(kinds).toEqual(['no source', 'wrong boundary']);
  });
});

describe('the rule by which recovered material shares its first life', () => {
  const figure = { value: '60', unit: 'kgCO2e/t-ar', ...sourced };

  it.each(['closed loop', 'substitution'] as const)('is refused by name where it is %s', (allocation) => {
    const [problem, ...more] = problemsOf(given(testliner, { 'material.occ.carbon': { ...figure, allocation } }));

    expect(more).toEqual([]);
    expect(problem).toMatchObject({ kind: 'wrong allocation', given: allocation, wanted: 'cut-off' });
  });

  it.each(['none', 'cut-off'] as const)('is kept where it is %s', (allocation) => {
    const open = valueOf(given(testliner, { 'material.occ.carbon': { ...figure, allocation } }));
    const causes = footprint(open).routes.flatMap((route) => route.causes);
    const factors = causes.flatMap((cause) => cause.factors).filter(({ id }) => id === 'material.occ.carbon');

    expect(factors.length).toBeGreaterThan(0);
    for (const factor of factors) expect(factor).toMatchObject({ allocation, year: '', gwp: '' });
  });

  it('comes with year and warming potentials where they are given', () => {
    const more = { year: '2025', gwp: 'AR5', allocation: 'cut-off' } as const;
    const open = valueOf(given(testliner, { 'material.occ.carbon': { ...figure, ...more } }));
    const [factor] = footprint(open)
      .routes.flatMap((route) => route.causes.flatMap((cause) => cause.factors))
      .filter(({ id }) => id === 'material.occ.carbon');

    expect(factor).toMatchObject(more);
  });
});
