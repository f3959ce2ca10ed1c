import { describe, expect, it } from 'vitest';
import { Failure } from '../../src/kernel/evaluate/failure.ts';
import { restoreDefault } from '../../src/index.ts';
import { demonstration, valueOf } from '../examples/demonstration.ts';

const whole = demonstration();
// Nobody needs to say what the product sells for until a machine that is sold out loses tonnes; the demonstration does not say it.
const unpriced = ['product.price', 'product.contribution'].concat(
  ['virgin', 'recovered'].flatMap((route) => [`${route}.machineEffect.price`, `${route}.machineEffect.contribution`]),
);
const failing = (open: typeof whole): readonly string[] =>
  [...open.model.graph.positions.keys()].filter((id) => open.values.of(id) instanceof Failure);
const failed = (open: typeof whole): readonly string[] => failing(open).filter((id) => !unpriced.includes(id));

describe('a figure that nobody has given', () => {
  const open = valueOf(restoreDefault(whole, 'recovered.supermarket.share'));

  it('is a gap, and nothing else is wrong', () => {
    expect(open.gaps.map((gap) => ('id' in gap ? gap.id : ''))).toEqual(['recovered.supermarket.share']);
  });

  it('spoils what is made of it', () => {
    const { number, exact } = open.values;
    for (const id of [
      'recovered.supermarket.feed',
      'recovered.bctmp.share',
      'recovered.cost.total',
      'difference.total',
    ]) {
      expect(number.call(open.values, id), id).toBeNaN();
      expect(exact.call(open.values, id), id).toBe('');
    }
  });

  it('spoils nothing else: the other route and what all share keep every digit', () => {
    const spoilt = new Set(failed(open));
    const untouched = [...open.model.graph.positions.keys()].filter((id) => !spoilt.has(id));

    for (const id of untouched) expect(open.values.exact(id), id).toBe(whole.values.exact(id));
    expect(untouched.filter((id) => id.startsWith('virgin.'))).toEqual(
      [...whole.model.graph.positions.keys()].filter((id) => id.startsWith('virgin.')),
    );
    expect(untouched).toContain('recovered.bskp.yield');
  });

  it('spoils exactly the quantities that stand on it in the graph', () => {
    const { nodes, positions } = open.model.graph;
    const reached = new Set([positions.get('recovered.supermarket.share')]);
    // Of a choice only the branch that is taken counts.
    const usedBy = ({ operation, args }: (typeof nodes)[number]): readonly number[] => {
      if (operation.op !== 'whenAbove') return args;
      const [value, limit, above, otherwise] = args.map((arg) => ({ arg, at: open.values.at(nodes[arg]!) }));
      const isAbove = !(value!.at instanceof Failure || limit!.at instanceof Failure) && value!.at.gt(limit!.at);
      return [value!.arg, limit!.arg, (isAbove ? above! : otherwise!).arg];
    };
    for (const node of nodes) if (usedBy(node).some((arg) => reached.has(arg))) reached.add(node.index);
    const standing = [...positions].filter(([, at]) => reached.has(at)).map(([id]) => id);

    // What a lost tonne is worth stands on this figure too, and fails for want of a price already.
    expect(failed(open)).toEqual(standing.filter((id) => !unpriced.includes(id)));
  });

  it('names itself as the beginning of every failure', () => {
    const at = open.model.graph.positions.get('recovered.supermarket.share');
    for (const id of failed(open))
      expect(open.values.of(id), id).toMatchObject({ at, reason: { kind: 'no value given' } });
  });
});

describe('a whole case', () => {
  it('has no gap and no failure, a price that it does not need apart', () => {
    expect(whole.gaps).toEqual([]);
    expect([...failing(whole)].sort()).toEqual([...unpriced].sort());
  });

  it('has no quantity of a name it does not know', () => {
    expect(whole.values.has('nothing')).toBe(false);
    expect(() => whole.values.of('nothing')).toThrow('No quantity named "nothing"');
  });
});
