import { describe, expect, test } from 'vitest';
import type { Decimal } from '../../src/kernel/evaluate/decimal-settings.ts';
import { type DecimalOutcome, evaluateDecimal } from '../../src/kernel/evaluate/decimal.ts';
import { evaluateFloat, floatProgram } from '../../src/kernel/evaluate/float.ts';
import { Failure } from '../../src/kernel/evaluate/failure.ts';
import type { Graph } from '../../src/kernel/graph/graph.ts';
import { buildModel } from '../../src/paper/model.ts';
import { Dice } from '../support/dice.ts';
import { Evaluation } from '../support/evaluation.ts';
import { randomModel } from '../support/random-figures.ts';
import { smallCase } from '../support/small-case.ts';

/** Everything that is made of the node at `start`, found by following arguments; branches of a choice count only where they are taken. */
function dependants(graph: Graph, start: number, untaken: (choice: number, branch: number) => boolean): Set<number> {
  const reached = new Set([start]);
  for (const { index, args, operation } of graph.nodes) {
    const counts = args.some(
      (arg, place) => reached.has(arg) && !(operation.op === 'whenAbove' && place >= 2 && untaken(index, place)),
    );
    if (counts) reached.add(index);
  }
  return reached;
}

// Law: a figure that is missing spoils what is made of it and nothing else, and each spoilt quantity names where it began.
describe('taking one figure away', () => {
  test('spoils exactly what is made of it, over 40 random cases', () => {
    let spoiltInAll = 0;
    for (let seed = 7001; seed <= 7040; seed += 1) {
      const { model, figures } = randomModel(seed, { lines: 2, stages: 3 });
      const { graph } = model;
      const whole = evaluateDecimal(graph, figures);
      const gone = new Dice(seed).pick(graph.inputs).id;
      const without: Graph = {
        ...graph,
        inputs: graph.inputs.map((input) =>
          input.id === gone ? { ...input, given: null, usual: { ...input.usual, value: null } } : input,
        ),
      };
      const left = new Map([...figures].filter(([id]) => id !== gone));
      const start = graph.positions.get(gone)!;
      // Which branch a choice took: 2 above the limit, 3 otherwise. Where the choice itself fails, both count.
      const untaken = (choice: number, branch: number): boolean => {
        const { args } = graph.nodes[choice]!;
        const [value, limit] = [whole[args[0]!]!, whole[args[1]!]!];
        if (value instanceof Failure || limit instanceof Failure) return false;
        return branch !== (value.greaterThan(limit) ? 2 : 3);
      };

      const exact = evaluateDecimal(without, left);
      const fast = evaluateFloat(floatProgram(without), left);
      const expected = dependants(graph, start, untaken);
      const spoilt = placesWhere(exact, (value) => value instanceof Failure);
      const origins = new Set(exact.flatMap((value) => (value instanceof Failure ? [value.at] : [])));

      const message = `seed ${String(seed)}, without ${gone}`;
      expect(spoilt.join(), message).toBe(placesWhere(graph.nodes, ({ index }) => expected.has(index)).join());
      expect([...origins], message).toEqual([start]);
      expect(placesWhere([...fast], Number.isNaN).join(), message).toBe(spoilt.join());
      // What is not spoilt keeps its value to the last digit.
      const changed = placesWhere(exact, (value, at) => !(value instanceof Failure) && !sameValue(value, whole[at]));
      expect(changed, message).toEqual([]);
      spoiltInAll += spoilt.length;
    }
    expect(spoiltInAll).toBeGreaterThan(40);
  });

  test('names the price that is missing, and leaves the other route and the freight as they are', () => {
    const content = smallCase({
      stages: [{ id: 'slush', like: 'pumps' }],
      figures: { 'material.paper.freight': '18 EUR/t-ar' },
    });
    const { 'material.paper.price': _price, ...inputs } = content.inputs;
    const model = buildModel({ ...content, inputs });

    const mill = new Evaluation(model);
    const fibre = mill.outcome('mill.cost.fibre.paper');

    expect(model.problems).toEqual([
      { kind: 'no figure', id: 'material.paper.price', label: 'Net price agreed', unit: 'EUR/t-ar' },
    ]);
    if (!(fibre instanceof Failure)) throw new Error('The fibre has a cost without a price');
    expect(model.graph.nodes[fibre.at]?.declaration?.id).toBe('material.paper.price');
    expect(fibre.reason).toEqual({ kind: 'no value given' });
    expect(mill.number('mill.cost.freight')).toBeCloseTo(20, 12);
    expect(mill.number('mill.bought.paper')).toBeCloseTo(1, 14);
  });

  test('says that a line which keeps nothing has no yield, and leaves the other route its cost', () => {
    // Stock is divided by the yield, so a yield of nothing is where the failure begins.
    const content = smallCase({ stages: [{ id: 'reject', like: 'pumps' }], figures: rejectAll });

    const mill = new Evaluation(buildModel(content));
    const total = mill.outcome('mill.cost.total');

    if (!(total instanceof Failure)) throw new Error('A line without yield has a cost');
    expect(total.reason).toMatchObject({ kind: 'outside', bounds: { above: '0' } });
    expect(mill.outcome('mill.line.yield')).toBeInstanceOf(Failure);
    expect(mill.number('other.cost.total')).toBeGreaterThan(0);
  });
});

const rejectAll = { 'mill.line.reject.removal.fibre': '100 %' };

function placesWhere<Item>(items: readonly Item[], holds: (item: Item, at: number) => boolean): number[] {
  return items.flatMap((item, at) => (holds(item, at) ? [at] : []));
}

function sameValue(left: Decimal, right: DecimalOutcome | undefined): boolean {
  return right !== undefined && !(right instanceof Failure) && left.equals(right);
}
