import { describe, expect, it } from 'vitest';
import { breakEven, editStructure, openCase, problemSentence, sensitivity } from '../../../src/index.ts';
import { problemsOf, valueOf } from '../../examples/demonstration.ts';
import { demonstrationWith } from './what-if-cases.ts';

const pulp = 'material.bctmp.price';
const usual = valueOf(demonstrationWith({}));
const judged = valueOf(
  demonstrationWith({ ranges: { [pulp]: { low: '500', high: '600', source: 'Invented offer' } } }),
);
const swingOf = (from: typeof usual) => sensitivity(from, 'difference.total').judged.find(({ id }) => id === pulp);

describe('a range that a person judged', () => {
  it('takes the place of the usual one in a swing', () => {
    expect(swingOf(judged)).toMatchObject({ low: 500, high: 600, convention: false });
    expect(swingOf(usual)).not.toMatchObject({ low: 500, high: 600 });
  });

  it('makes the swing as large as it is wide: the cost is a straight line in a price', () => {
    const [narrow, wide] = [swingOf(judged), swingOf(usual)];

    expect((narrow?.swing ?? NaN) / 100).toBeCloseTo(
      (wide?.swing ?? NaN) / ((wide?.high ?? NaN) - (wide?.low ?? NaN)),
      9,
    );
  });

  it('decides whether a tie is likely', () => {
    // The routes tie at about 440 EUR/adt: inside the usual range of the pulp, below the judged one.
    expect(breakEven(usual, 'difference.total', pulp)).toMatchObject({ usual: true });
    expect(breakEven(judged, 'difference.total', pulp)).toMatchObject({ usual: false });
  });

  it('changes no figure of the case', () => {
    expect(judged.values.exact('difference.total')).toBe(usual.values.exact('difference.total'));
  });

  it('gives a range to an input that has none of its own', () => {
    const id = 'product.tonnes';
    const bare = sensitivity(usual, 'difference.totalPerYear').conventional.map((each) => each.id);
    const set = valueOf(
      editStructure(usual, { kind: 'set range', input: id, range: { low: '80000', high: '110000' } }),
    );

    expect(bare).toContain(id);
    expect(sensitivity(set, 'difference.totalPerYear').judged.map((each) => each.id)).toContain(id);
  });

  it('is taken away again, and leaves no trace', () => {
    const away = valueOf(editStructure(judged, { kind: 'set range', input: pulp, range: null }));

    expect(away.content).toEqual(usual.content);
    expect('ranges' in away.content).toBe(false);
  });

  it.each([
    {
      what: 'ends that are turned round',
      id: pulp,
      low: '600',
      high: '500',
      said: 'allowed is a low end below the high',
    },
    {
      what: 'ends that are the same',
      id: pulp,
      low: '600',
      high: '600',
      said: 'allowed is a low end below the high end',
    },
    {
      what: 'an unknown input',
      id: 'material.bctmp.prize',
      low: '1',
      high: '2',
      said: 'near to it are "material.bctmp.pr',
    },
    { what: 'an end that cannot be', id: 'product.moisture', low: '5', high: '120', said: '120 % was given' },
  ])('is refused in words: $what', ({ id, low, high, said }) => {
    const problems = problemsOf(editStructure(usual, { kind: 'set range', input: id, range: { low, high } }));

    expect(problems.map(problemSentence).join(' ')).toContain(said);
  });

  it('is refused where an end is no number', () => {
    const text = JSON.stringify({
      format: 'tonne',
      version: 1,
      ...usual.content,
      ranges: { [pulp]: { low: 'few', high: '9' } },
    });

    expect(problemsOf(openCase(text)).map(problemSentence).join(' ')).toContain(`"ranges.${pulp}.low"`);
  });
});
