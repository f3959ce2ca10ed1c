import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { compare } from '../../src/index.ts';
import { demonstration } from '../examples/demonstration.ts';
import { demonstrationFile, jsonOf } from './terminal.ts';

/** What is promised: "number", "text", "nothing" (null), or a group or list of such. Nothing else may be there. */
type Shape = 'number' | 'text' | 'nothing' | 'truth' | 'by id' | { readonly [Key in string]: Shape } | readonly [Shape];

const money: Shape = { perTonne: 'number', perYear: 'number', perTonneExact: 'text', perYearExact: 'text' };
const account: Shape = { id: 'text', label: 'text', ...money };
const step: Shape = { id: 'text', label: 'text', quantityId: 'text', perYear: 'number', shown: 'text' };
const steps: Shape = { view: 'text', costsAlone: step, causes: [step], takenBack: step, left: step };
const promised: Shape = {
  condition: 'text',
  product: { name: 'text', moisture: 'number', tonnesPerYear: 'number' },
  currency: 'text',
  priceYear: 'text',
  routes: [
    {
      id: 'text',
      label: 'text',
      accounts: [account],
      totals: {
        costPerTonne: 'number',
        costPerYear: 'number',
        costPerTonneExact: 'text',
        costPerYearExact: 'text',
        costPerTonneWithoutPolicy: 'number',
      },
      energy: { electricity: 'number', heat: 'number' },
      lines: [{ id: 'text', label: 'text', yield: 'number', fibreYield: 'number', feed: 'number', stock: 'number' }],
      residues: [
        {
          stream: 'text',
          label: 'text',
          wasteCode: 'text',
          dry: 'number',
          wet: 'number',
          destination: [{ id: 'text', label: 'text', wet: 'number' }],
        },
      ],
      purchased: [{ material: 'text', label: 'text', boneDry: 'number', asReceived: 'number' }],
      water: { fresh: 'number', effluent: 'number' },
    },
  ],
  difference: { base: 'text', with: 'text', ...money, accounts: [account] },
  sameProduct: {
    base: 'text',
    with: 'text',
    questions: [{ question: 'text', reply: 'nothing' }],
    open: 'number',
    stand: 'text',
  },
  today: 'text',
  dates: [
    { id: 'text', label: 'text', where: 'text', kind: 'text', date: 'text', months: 'nothing', freshness: 'text' },
  ],
  machineEffect: {
    inForce: 'text',
    isEntered: 'truth',
    isPriced: 'truth',
    soldOut: steps,
    ordersLimited: steps,
    figures: 'by id',
  },
  warnings: [{ sentence: 'text', about: 'text' }],
};

function expectShape(value: unknown, shape: Shape, path: string): void {
  if (shape === 'number') expect(Number.isFinite(value), path).toBe(true);
  else if (shape === 'nothing') expect(value, path).toBeNull();
  else if (shape === 'text') expect(typeof value, path).toBe('string');
  else if (shape === 'truth') expect(typeof value, path).toBe('boolean');
  // What cannot be worked out is null.
  else if (shape === 'by id')
    for (const figure of Object.values(value as object))
      expect(figure === null || Number.isFinite(figure), path).toBe(true);
  else if (Array.isArray(shape)) {
    expect(Array.isArray(value) && value.length > 0, path).toBe(true);
    (value as unknown[]).forEach((each, place) =>
      expectShape(each, (shape as readonly [Shape])[0], `${path}[${String(place)}]`),
    );
  } else {
    const group = shape as Readonly<Record<string, Shape>>;
    expect(Object.keys(value as object), path).toEqual(Object.keys(group));
    for (const [key, inner] of Object.entries(group))
      expectShape((value as Record<string, unknown>)[key], inner, `${path}.${key}`);
  }
}

function keysOf(shape: Shape): readonly string[] {
  if (typeof shape === 'string') return [];
  if (Array.isArray(shape)) return keysOf((shape as readonly [Shape])[0]);
  return Object.entries(shape as Readonly<Record<string, Shape>>).flatMap(([key, inner]) => [key, ...keysOf(inner)]);
}

describe('what compare --json prints', () => {
  let printed: unknown;
  beforeAll(async () => {
    printed = await jsonOf(['compare', demonstrationFile]);
  });

  it('has exactly the shape that is promised', () => {
    expectShape(printed, promised, 'compare');
  });

  it('has every key described in README.md', () => {
    const readme = readFileSync('README.md', 'utf8');
    const described = readme.slice(readme.indexOf('### What `compare --json` prints'), readme.indexOf('## Case files'));
    for (const key of new Set(keysOf(promised)))
      expect(described.includes(key) || (key.endsWith('Exact') && described.includes('exact')), key).toBe(true);
  });

  it('holds the numbers of the engine, none lost on the way', () => {
    expect(printed).toMatchObject(JSON.parse(JSON.stringify(compare(demonstration()))) as object);
  });
});
