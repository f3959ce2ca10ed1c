import { describe, expect, it } from 'vitest';
import { Decimal } from '../../src/kernel/evaluate/decimal-settings.ts';
import type { DecimalOutcome } from '../../src/kernel/evaluate/decimal.ts';
import { Failure } from '../../src/kernel/evaluate/failure.ts';
import type { Graph, Node } from '../../src/kernel/graph/graph.ts';
import { type OpenCase, restoreDefault } from '../../src/index.ts';
import { checksOf } from '../../src/study/checks.ts';
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

describe('the laws of a case', () => {
  it('are kept by the demonstration case', () => {
    expect(checksOf(whole)).toEqual(['mass', 'machine', 'costs', 'difference'].map((id) => ({ id, kept: true })));
  });

  it.each([
    { law: 'mass', id: 'recovered.mixed.closure', wrong: (right: Decimal) => right.plus('0.001') },
    { law: 'mass', id: 'virgin.bskp.closure', wrong: (right: Decimal) => right.minus('0.001') },
    { law: 'machine', id: 'virgin.machine.brokeMass', wrong: moreBy('0.01') },
    { law: 'machine', id: 'recovered.machine.gross', wrong: moreBy('-0.01') },
    { law: 'costs', id: 'recovered.cost.carbon', wrong: moreBy('0.001') },
    { law: 'costs', id: 'virgin.cost.total', wrong: moreBy('0.00001') },
    { law: 'difference', id: 'difference.cost.heat.dryers', wrong: (right: Decimal) => right.plus('0.01') },
    { law: 'difference', id: 'difference.total', wrong: moreBy('-0.001') },
  ])('$law: a wrong $id is found, and no other law is blamed', ({ law, id, wrong }) => {
    expect(whole.values.has(id), id).toBe(true);
    expect(lost(broken(whole, { [id]: wrong }))).toEqual([law]);
  });

  it('allow for the last digits of a rounding and for no more', () => {
    expect(lost(broken(whole, { 'virgin.cost.total': moreBy('1e-12') }))).toEqual([]);
    expect(lost(broken(whole, { 'virgin.cost.total': moreBy('1e-8') }))).toEqual(['costs']);
  });

  it('are not kept by what cannot be worked out', () => {
    const failing = (): DecimalOutcome => new Failure(0, { kind: 'division by zero' });

    expect(lost(broken(whole, { 'virgin.cost.carbon': failing }))).toEqual(['costs']);
    expect(lost(broken(whole, { 'virgin.machine.gross': failing }))).toEqual(['machine']);
    const open = valueOf(restoreDefault(whole, 'recovered.mixed.share'));
    expect(lost(open)).toEqual(['mass', 'costs', 'difference']);
  });
});
