import { describe, expect, it } from 'vitest';
import { DecimalReading } from '../../src/kernel/evaluate/decimal.ts';
import { Failure } from '../../src/kernel/evaluate/failure.ts';
import { type OpenCase, changeInput } from '../../src/index.ts';
import { type ClaimCaution, claimCautions } from '../../src/study/claim-cautions.ts';
import { demonstration, valueOf } from '../examples/demonstration.ts';

const whole = demonstration();
const ofKind = <Kind extends ClaimCaution['kind']>(open: OpenCase, kind: Kind) =>
  claimCautions(open).filter((caution): caution is Extract<ClaimCaution, { kind: Kind }> => caution.kind === kind);
const factors = whole.model.graph.inputs.filter(({ usual }) => usual.provenance.details?.['boundary'] !== undefined);

describe('a public claim on carbon', () => {
  it('is too close to call where the ranges of the factors leave more open than parts the routes', () => {
    // By hand: every factor to either end of its range, half the swings added as squares.
    const { graph } = whole.model;
    const place = graph.positions.get(caution(whole).about) ?? -1;
    const at = (id: string, figure: string): number => {
      const found = new DecimalReading(graph, new Map([[id, figure]])).at(place);
      return found instanceof Failure ? NaN : found.toNumber();
    };
    const squares = factors.map(({ id, usual }) =>
      usual.low === null || usual.high === null ? 0 : ((at(id, usual.high) - at(id, usual.low)) / 2) ** 2,
    );
    const doubt = Math.sqrt(squares.reduce((sum, square) => sum + square, 0));
    const apart = whole.values.number(caution(whole).about);

    const told = ofKind(whole, 'too close to call');
    expect(told.length).toBe(Math.abs(apart) < doubt ? 1 : 0);
    for (const found of told) {
      expect(found.difference).toBeCloseTo(apart, 6);
      expect(found.doubt).toBeCloseTo(doubt, 6);
    }
  });

  it('counts the factors in force that nobody has a source for, and not those that were replaced', () => {
    const [before] = ofKind(whole, 'unsourced factors');
    const weak = factors.filter(({ given, usual }) =>
      ['practice', 'memory', 'none'].includes((given?.provenance ?? usual.provenance).status),
    );
    expect(before).toMatchObject({ count: weak.length });

    const first = weak.find(({ usual }) => usual.value !== null)!;
    const after = valueOf(
      changeInput(whole, first.id, first.usual.value ?? '', { status: 'measured', source: 'Meter' }),
    );
    expect(ofKind(after, 'unsourced factors')).toMatchObject([{ count: weak.length - 1, of: before?.of }]);
  });

  it('names the years of the defaults, each once and in order, where they are of several', () => {
    const [told] = ofKind(whole, 'mixed years');
    const years = factors.flatMap(({ usual }) => usual.provenance.details?.['year'] || []);

    expect(told?.years.length).toBeGreaterThan(1);
    expect(told?.years).toEqual([...new Set(told?.years)].sort());
    expect(years).toEqual(expect.arrayContaining([...(told?.years ?? [])]));
  });
});

function caution(open: OpenCase): ClaimCaution {
  const [first] = claimCautions(open);
  if (first === undefined) throw new Error('Nothing is said about carbon');
  return first;
}
