import { describe, expect, it } from 'vitest';
import { changeInput, editStructure, problemSentence, restoreDefault } from '../../../src/index.ts';
import { demonstration, problemsOf, valueOf } from '../../examples/demonstration.ts';
import { demonstrationWith, figure, scenario } from './what-if-cases.ts';

const open = demonstration();

describe('a figure of the case', () => {
  it.each(Object.entries(open.content.uncertainty?.inputs ?? {}))(
    'is never refused because of how it is drawn, far below or above its spread: %s',
    (id) => {
      const input = open.model.graph.inputs.find((each) => each.id === id);
      const now = Number(input?.given?.value ?? input?.usual.value);
      for (const share of [0.05, 3]) {
        const typed = String(Number((now * share).toPrecision(4)));
        expect([id, typed, changeInput(open, id, typed).ok]).toEqual([id, typed, true]);
      }
    },
  );

  it('is never refused because of a range, a limit or a scenario about it', () => {
    const asked = valueOf(
      demonstrationWith({
        ranges: { 'price.electricity': { low: '0.1', high: '0.15' } },
        scenarios: [scenario('power', { 'price.electricity': figure('0.2', 'EUR/kWh') })],
        limits: open.content.limits ?? [],
      }),
    );

    for (const typed of ['0', '0.01', '5']) expect(changeInput(asked, 'price.electricity', typed).ok).toBe(true);
    expect(changeInput(asked, 'recovered.mixed.share', '90').ok).toBe(true);
  });

  it('can be taken back to the default whatever asks about it', () => {
    for (const id of Object.keys(open.content.uncertainty?.inputs ?? {}))
      expect([id, restoreDefault(open, id).ok]).toEqual([id, true]);
  });

  it('takes what is asked about it along, where the input exists only while it is given', () => {
    const id = 'recovered.limit.ash';
    const given = valueOf(changeInput(open, id, '7'));
    const edits = [
      { kind: 'set range', input: id, range: { low: '6', high: '8' } },
      { kind: 'put scenario', scenario: scenario('ash', { [id]: figure('6', '%') }) },
    ] as const;
    const asked = edits.reduce((from, edit) => valueOf(editStructure(from, edit)), given);
    const restored = valueOf(restoreDefault(asked, id));

    expect(asked.content.ranges).toEqual({ [id]: { low: '6', high: '8' } });
    expect(restored.content.ranges).toBeUndefined();
    // The scenario gives the figure itself, so there it stays.
    expect(restored.content.scenarios?.at(-1)?.inputs[id]).toEqual(figure('6', '%'));
  });
});

describe('a scenario that cannot be', () => {
  it.each([
    {
      what: 'an unknown input, with those that may have been meant',
      inputs: { 'price.electricty': figure('0.1', 'EUR/kWh') },
      said: 'There is no input "price.electricty" in this case; near to it are "price.electricity"',
    },
    {
      what: 'another kind of unit',
      inputs: { 'price.electricity': figure('0.1', 'EUR/GJ') },
      said: 'Electricity (price.electricity): "EUR/GJ" is another kind of unit',
    },
    {
      what: 'what can never be true',
      inputs: { 'material.mixed.moisture': figure('170', '%') },
      said: '170 % was given; allowed is at least 0 % and below 100 %',
    },
    {
      what: 'a ton that is none',
      inputs: { 'material.mixed.price': figure('100', 'EUR/ton') },
      said: 'does not say which ton',
    },
    {
      what: 'another kind of unit for an input that exists only once it is given',
      inputs: { 'recovered.limit.ash': figure('7', 'kWh') },
      said: 'Ash, at most (recovered.limit.ash): "kWh" is another kind of unit',
    },
  ])('is refused in words: $what', ({ inputs, said }) => {
    const problems = problemsOf(demonstrationWith({ scenarios: [scenario('s', inputs)] }));

    expect(problems.map(problemSentence).join(' ')).toContain(said);
  });

  it('is refused when its name is taken, in the file', () => {
    const problems = problemsOf(demonstrationWith({ scenarios: [scenario('s', {}), scenario('s', {})] }));

    expect(problems.map(problemSentence)).toEqual(['"scenarios": "s" stands there twice; each name may stand once.']);
  });

  it('is refused as the forty-first', () => {
    const forty = Array.from({ length: 40 }, (_, at) => scenario(`s-${String(at)}`, {}));
    const full = valueOf(demonstrationWith({ scenarios: forty }));

    expect(full.content.scenarios).toHaveLength(40);
    expect(editStructure(full, { kind: 'put scenario', scenario: scenario('one-more', {}) }).ok).toBe(false);
  });

  it('is told together with everything else that is wrong', () => {
    const problems = problemsOf(
      demonstrationWith({
        ranges: { 'price.fuel': { low: '9', high: '8' } },
        limits: [{ ...(open.content.limits ?? [])[0]!, unit: 'kg' }],
        scenarios: [scenario('s', { 'material.mixed.moisture': figure('170', '%') })],
      }),
    );

    expect(problems.map(({ kind }) => kind)).toEqual(['wrong form', 'wrong form', 'outside']);
  });
});

describe('an empty scenario', () => {
  it('is the case as it stands', () => {
    expect(demonstrationWith({ scenarios: [scenario('s', {})] }).ok).toBe(true);
  });
});
