import { describe, expect, it } from 'vitest';
import type { Problem } from '../../src/case/problem.ts';
import { problemSentence } from '../../src/wording/problem-sentence.ts';

type Told = {
  readonly [Kind in Problem['kind']]: { readonly problem: Extract<Problem, { kind: Kind }>; readonly says: string };
};

/** One of every kind: a kind that is missing here does not compile. */
const everyKind: Told = {
  'not text': {
    problem: { kind: 'not text', detail: 'Unexpected end of JSON input' },
    says: 'The file is not a case: its text cannot be read as JSON (Unexpected end of JSON input).',
  },
  'too large': {
    problem: { kind: 'too large', bytes: 7_000_000, most: 5_000_000 },
    says: 'The file holds 7000000 characters; a case has at most 5000000.',
  },
  'too deep': {
    problem: { kind: 'too deep', most: 24 },
    says: 'The file is nested more than 24 levels deep; a case is not.',
  },
  'not a case': {
    problem: { kind: 'not a case', given: '"letter"' },
    says: 'The file does not say that it is a case: "format" is "letter", and must be "tonne".',
  },
  'newer version': {
    problem: { kind: 'newer version', given: '7', known: 1 },
    says: 'The file has format version 7; this program reads up to 1. It was left as it is.',
  },
  'unknown key': {
    problem: { kind: 'unknown key', path: 'routes.0.colour' },
    says: '"routes.0.colour" is not something a case can hold.',
  },
  missing: { problem: { kind: 'missing', path: 'product.name' }, says: '"product.name" is missing.' },
  'wrong form': {
    problem: { kind: 'wrong form', path: 'priceYear', given: '"24"', allowed: 'a year of four digits' },
    says: '"priceYear": "24" was given; allowed is a year of four digits.',
  },
  'said twice': {
    problem: { kind: 'said twice', path: 'materials', given: 'mixed' },
    says: '"materials": "mixed" stands there twice; each name may stand once.',
  },
  'unknown reference': {
    problem: {
      kind: 'unknown reference',
      path: 'compare.base',
      given: 'virgn',
      what: 'route',
      known: ['virgin', 'recovered'],
    },
    says: '"compare.base": there is no route "virgn"; there are "virgin", "recovered".',
  },
  'unknown input': {
    problem: { kind: 'unknown input', id: 'price.electricty', near: ['price.electricity'] },
    says: 'There is no input "price.electricty" in this case; near to it are "price.electricity".',
  },
  'worked out': {
    problem: { kind: 'worked out', id: 'material.occ.price' },
    says: '"material.occ.price" is worked out in this case, from price tiers or from strength, and takes no figure, range or spread of its own.',
  },
  'not a number': {
    problem: { kind: 'not a number', id: 'price.water', given: 'twelve' },
    says: 'price.water: "twelve" is not a number; write one such as 12.5, with a unit if you like.',
  },
  'which ton': {
    problem: { kind: 'which ton', id: 'product.tonnes', given: 'tons/a' },
    says: 'product.tonnes: "tons/a" does not say which ton. Write t (metric), st (short, 907 kg) or lt (long, 1016 kg), and whether bone-dry, air-dry or as received: bdt, adt, t-ar, bdst, adst, st-ar.',
  },
  'wrong unit': {
    problem: {
      kind: 'wrong unit',
      id: 'material.mixed.price',
      label: 'Net price agreed',
      given: 'EUR/bdt',
      wanted: 'EUR/t-ar',
    },
    says: 'Net price agreed (material.mixed.price): "EUR/bdt" is another kind of unit; it is given in €/t as received (written EUR/t-ar).',
  },
  outside: {
    problem: {
      kind: 'outside',
      id: 'mill.line.share',
      label: 'Line share',
      given: '-4',
      unit: '%',
      allowed: { least: '0', most: '100' },
    },
    says: 'Line share (mill.line.share): \u22124 % was given; allowed is 0 to 100 %.',
  },
  'no source': {
    problem: { kind: 'no source', id: 'carbon.grid', label: 'Grid electricity' },
    says: 'Grid electricity (carbon.grid) is a carbon factor: a figure that replaces the default must name its source.',
  },
  'wrong boundary': {
    problem: { kind: 'wrong boundary', id: 'x', label: 'Spreading', given: 'transport only', wanted: 'treatment' },
    says: 'Spreading (x) takes in treatment; the figure given takes in transport only and cannot stand for it.',
  },
  'wrong allocation': {
    problem: {
      kind: 'wrong allocation',
      id: 'x',
      label: 'Collected and sorted',
      given: 'closed loop',
      wanted: 'cut-off',
    },
    says: 'Collected and sorted (x): a footprint here is made by the cut-off rule; the figure given is made by closed loop and cannot stand in it.',
  },
  'no outlet open': {
    problem: { kind: 'no outlet open', stream: 'Cleaner rejects', year: '2034' },
    says: 'Cleaner rejects: in 2034 no destination of the plan is open to take it; let one take residues in that year.',
  },
  'no figure': {
    problem: { kind: 'no figure', id: 'product.tonnes', label: 'Saleable tonnes a year', unit: 't/a' },
    says: 'Saleable tonnes a year (product.tonnes) has no figure; give one in t/year (written t/a).',
  },
};

describe('a problem', () => {
  it.each(Object.values(everyKind))(
    'of the kind "$problem.kind" is told: which thing, what was given, what is allowed',
    ({ problem, says }) => {
      expect(problemSentence(problem)).toBe(says);
    },
  );

  it.each([
    { given: 'EUR/MWh', wanted: 'EUR/GJ', hint: 'is written MWh-heat (3.6 GJ) or kWh-heat.' },
    {
      given: 'EUR/short ton',
      wanted: 'EUR/t-ar',
      hint: 'Short and long tons of that kind are written st-ar and lt-ar.',
    },
    { given: 'EUR/st', wanted: 'EUR/bdt', hint: 'Short and long tons of that kind are written bdst and bdlt.' },
    { given: 'EUR/st', wanted: 'EUR/wet-t', hint: 'Short and long tons of that kind are written wet-st and wet-lt.' },
    { given: 'EUR/st', wanted: 'EUR/gt', hint: 'Short and long tons of that kind are written gst and glt.' },
  ])('of a unit says how what was meant is written: $given for $wanted', ({ given, wanted, hint }) => {
    const sentence = problemSentence({ kind: 'wrong unit', id: 'x', label: 'Price', given, wanted });

    expect(sentence).toContain('is another kind of unit');
    expect(sentence.endsWith(hint)).toBe(true);
  });

  it('of the whole file names the file', () => {
    expect(
      problemSentence({ kind: 'wrong form', path: '', given: '70000 values', allowed: 'at most 60000 values' }),
    ).toBe('The file: 70000 values was given; allowed is at most 60000 values.');
  });

  it('lists the first dozen names and counts the others', () => {
    const known = Array.from({ length: 15 }, (_, at) => `n${String(at + 1)}`);
    const sentence = problemSentence({ kind: 'unknown reference', path: 'like', given: 'x', what: 'stage', known });

    expect(sentence).toContain('"n12" and 3 more.');
    expect(sentence).not.toContain('"n13"');
  });

  it('says that there are none where nothing could have been meant', () => {
    expect(problemSentence({ kind: 'unknown reference', path: 'a', given: 'x', what: 'material', known: [] })).toBe(
      '"a": there is no material "x"; there are none.',
    );
    expect(problemSentence({ kind: 'unknown input', id: 'zzz', near: [] })).toBe(
      'There is no input "zzz" in this case.',
    );
  });

  it('calls the unit of a plain number a plain number', () => {
    expect(problemSentence({ kind: 'no figure', id: 'q', label: 'Quotient', unit: '1' })).toBe(
      'Quotient (q) has no figure; give one in a plain number.',
    );
  });
});
