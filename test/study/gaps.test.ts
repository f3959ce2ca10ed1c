import { describe, expect, it } from 'vitest';
import { Failure } from '../../src/kernel/evaluate/failure.ts';
import { restoreDefault } from '../../src/index.ts';
import { demonstration, valueOf } from '../examples/demonstration.ts';

const whole = demonstration();
const failed = (open: typeof whole): readonly string[] =>
  [...open.model.graph.positions.keys()].filter((id) => open.values.of(id) instanceof Failure);

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
    for (const node of nodes) if (node.args.some((arg) => reached.has(arg))) reached.add(node.index);
    const standing = [...positions].filter(([, at]) => reached.has(at)).map(([id]) => id);

    expect(failed(open)).toEqual(standing);
  });

  it('names itself as the beginning of every failure', () => {
    const at = open.model.graph.positions.get('recovered.supermarket.share');
    for (const id of failed(open))
      expect(open.values.of(id), id).toMatchObject({ at, reason: { kind: 'no value given' } });
  });
});

describe('a whole case', () => {
  it('has no gap and no failure', () => {
    expect(whole.gaps).toEqual([]);
    expect(failed(whole)).toEqual([]);
  });

  it('has no quantity of a name it does not know', () => {
    expect(whole.values.has('nothing')).toBe(false);
    expect(() => whole.values.of('nothing')).toThrow('No quantity named "nothing"');
  });
});
