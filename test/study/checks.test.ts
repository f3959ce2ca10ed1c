import { describe, expect, it } from 'vitest';
import { Decimal } from '../../src/kernel/evaluate/decimal-settings.ts';
import type { DecimalOutcome } from '../../src/kernel/evaluate/decimal.ts';
import { Failure } from '../../src/kernel/evaluate/failure.ts';
import type { Graph, Node } from '../../src/kernel/graph/graph.ts';
import { type OpenCase, restoreDefault } from '../../src/index.ts';
import { type CheckResult, checksOf } from '../../src/study/checks.ts';
import { Values } from '../../src/study/values.ts';
import { demonstration, valueOf } from '../examples/demonstration.ts';

/** Values of which some are made wrong by hand, as a mistake in the model would make them. */
class WrongValues extends Values {
  readonly #wrong: ReadonlyMap<string, (right: Decimal) => DecimalOutcome>;

  constructor(graph: Graph, wrong: Readonly<Record<string, (right: Decimal) => DecimalOutcome>>) {
    super(graph);
    this.#wrong = new Map(Object.entries(wrong));
  }

  override at(node: Node): DecimalOutcome {
    const right = super.at(node);
    const change = this.#wrong.get(node.declaration?.id ?? '');
    return change === undefined || right instanceof Failure ? right : change(right);
  }
}

const whole = demonstration();
const broken = (open: OpenCase, wrong: Readonly<Record<string, (right: Decimal) => DecimalOutcome>>): OpenCase => ({
  ...open,
  values: new WrongValues(open.model.graph, wrong),
});
const lost = (open: OpenCase): readonly string[] =>
  checksOf(open)
    .filter(({ kept }) => !kept)
    .map(({ id }) => id);
const moreBy = (share: string) => (right: Decimal) => right.times(new Decimal(1).plus(share));

/** For each law, figures of the demonstration case that would break it if they were wrong. A law without any does not compile. */
const breaking: Readonly<Record<CheckResult['id'], Readonly<Record<string, (right: Decimal) => Decimal>>>> = {
  mass: {
    'recovered.mixed.closure': (right) => right.plus('0.001'),
    'virgin.bskp.closure': (right) => right.minus('0.001'),
  },
  machine: { 'virgin.machine.brokeMass': moreBy('0.01'), 'recovered.machine.gross': moreBy('-0.01') },
  water: { 'virgin.water.closure': (right) => right.plus('0.001') },
  costs: {
    'virgin.cost.total': moreBy('0.00001'),
    'recovered.costPerYear.total': moreBy('-0.00001'),
    'recovered.cost.carbon.carbon': moreBy('0.001'),
    'virgin.costPerYear.heat.dryers': moreBy('0.001'),
  },
  difference: {
    'difference.cost.heat.dryers': (right) => right.plus('0.01'),
    'difference.total': moreBy('-0.001'),
  },
  carbon: { 'virgin.footprint.total': moreBy('0.001') },
};
const breakingCases = Object.entries(breaking).flatMap(([law, figures]) =>
  Object.entries(figures).map(([id, wrong]) => ({ law, id, wrong })),
);

describe('the laws of a case', () => {
  it('are kept by the demonstration case', () => {
    expect(checksOf(whole)).toEqual(Object.keys(breaking).map((id) => ({ id, kept: true })));
  });

  it.each(breakingCases)('$law: a wrong $id is found, and no other law is blamed', ({ law, id, wrong }) => {
    expect(whole.values.has(id), id).toBe(true);
    expect(lost(broken(whole, { [id]: wrong }))).toEqual([law]);
  });

  it('allow for the last digits of a rounding and for no more', () => {
    expect(lost(broken(whole, { 'virgin.cost.total': moreBy('1e-12') }))).toEqual([]);
    expect(lost(broken(whole, { 'virgin.cost.total': moreBy('1e-8') }))).toEqual(['costs']);
  });

  it('are not kept by what cannot be worked out', () => {
    const failing = (): DecimalOutcome => new Failure(0, { kind: 'division by zero' });

    expect(lost(broken(whole, { 'virgin.cost.carbon.carbon': failing }))).toEqual(['costs']);
    expect(lost(broken(whole, { 'virgin.machine.gross': failing }))).toEqual(['machine']);
  });

  it('that stand on a missing figure are not kept, the others are', () => {
    const open = valueOf(restoreDefault(whole, 'recovered.mixed.share'));

    expect(lost(open)).toEqual(expect.arrayContaining(['mass', 'costs', 'difference']));
    expect(lost(open)).not.toContain('machine');
  });
});
