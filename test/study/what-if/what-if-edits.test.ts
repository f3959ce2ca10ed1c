import { describe, expect, it } from 'vitest';
import {
  type Edit,
  type OpenCase,
  caseText,
  changeInput,
  editStructure,
  openCase,
  problemSentence,
} from '../../../src/index.ts';
import { withWhatIf } from '../../../src/case/edits/what-if-edits.ts';
import { demonstration, problemsOf, valueOf } from '../../examples/demonstration.ts';
import { Dice } from '../../support/dice.ts';
import { demonstrationWith, figure, scenario } from './what-if-cases.ts';
import { ashLimit } from './two-lines.ts';

const open = demonstration();
const after = (from: OpenCase, edit: Edit): OpenCase => valueOf(editStructure(from, edit));
const { route: _mill, ...ash } = ashLimit('8');

describe('edits of what is asked', () => {
  it('add a limit, put another in its place under the same id, and take it away', () => {
    const bare = valueOf(demonstrationWith({}));
    const added = after(bare, { kind: 'put limit', limit: ash });
    const tighter = after(added, { kind: 'put limit', limit: { ...ash, value: '6' } });

    expect(added.content.limits).toEqual([ash]);
    expect(tighter.content.limits).toEqual([{ ...ash, value: '6' }]);
    expect(caseText(after(tighter, { kind: 'remove limit', limit: 'ash' }))).toBe(caseText(bare));
  });

  it('add a scenario, change it where it stands, and take it away', () => {
    const bare = valueOf(demonstrationWith({}));
    const [one, two] = [scenario('one', {}), scenario('two', {})];
    const both = after(after(bare, { kind: 'put scenario', scenario: one }), { kind: 'put scenario', scenario: two });
    const renamed = after(both, { kind: 'put scenario', scenario: { ...one, label: 'First', note: 'Why' } });

    expect(renamed.content.scenarios).toEqual([{ ...one, label: 'First', note: 'Why' }, two]);
    const none = ['one', 'two'].reduce((from, id) => after(from, { kind: 'remove scenario', scenario: id }), renamed);
    expect(caseText(none)).toBe(caseText(bare));
  });

  it('change nothing where there is no such limit or scenario', () => {
    for (const edit of [
      { kind: 'remove limit', limit: 'nowhere' },
      { kind: 'remove scenario', scenario: 'nowhere' },
      { kind: 'put in force', scenario: 'nowhere' },
    ] as const)
      expect(withWhatIf(open.content, edit)).toEqual(open.content);
  });

  it('never change what a case comes to, save putting a scenario in force', () => {
    const edits: readonly Edit[] = [
      { kind: 'put limit', limit: ash },
      { kind: 'remove limit', limit: 'landfill' },
      { kind: 'put scenario', scenario: scenario('x', { 'price.fuel': figure('30', 'EUR/GJ') }) },
      { kind: 'remove scenario', scenario: 'cheap-pulp' },
      { kind: 'set range', input: 'price.fuel', range: { low: '5', high: '25' } },
      { kind: 'set uncertainty', uncertainty: null },
    ];
    for (const edit of edits)
      expect([edit.kind, after(open, edit).values.exact('difference.total')]).toEqual([
        edit.kind,
        open.values.exact('difference.total'),
      ]);
  });

  it('put a scenario in force by giving the case its figures, as if they had been typed', () => {
    const inForce = after(open, { kind: 'put in force', scenario: 'dear-power' });
    const typed = ['price.electricity 0.236', 'price.fuel 16'].reduce((from, line) => {
      const [id = '', value = ''] = line.split(' ');
      return valueOf(changeInput(from, id, value));
    }, open);

    expect(inForce.values.exact('difference.total')).toBe(typed.values.exact('difference.total'));
    expect(inForce.content.inputs['price.fuel']).toMatchObject({ value: '16', source: 'Demonstration' });
    expect(inForce.content.scenarios).toEqual(open.content.scenarios);
  });
});

describe('an edit that asks about what is not there', () => {
  it.each<{ what: string; edit: Edit; said: string }>([
    {
      what: 'a limit on a result that no route has',
      edit: { kind: 'put limit', limit: { ...ash, result: 'water.lost' } },
      said: 'there is no result "water.lost"',
    },
    {
      what: 'a limit in another kind of unit',
      edit: { kind: 'put limit', limit: { ...ash, unit: 'kWh/t' } },
      said: '"kWh/t" was given; allowed is the unit of the result',
    },
    {
      what: 'a limit without a name',
      edit: { kind: 'put limit', limit: { ...ash, label: '' } },
      said: '"limits.0.label": "" was given',
    },
    {
      what: 'a scenario with an unknown input',
      edit: { kind: 'put scenario', scenario: scenario('x', { 'price.fule': figure('9', 'EUR/GJ') }) },
      said: 'There is no input "price.fule"',
    },
    {
      what: 'a range of an unknown input',
      edit: { kind: 'set range', input: 'price.fule', range: { low: '5', high: '9' } },
      said: 'There is no input "price.fule"',
    },
  ])('is refused in words, and not taken and dropped: $what', ({ edit, said }) => {
    expect(problemsOf(editStructure(open, edit)).map(problemSentence).join(' ')).toContain(said);
  });
});

const shares = 'recovered.mixed.share';
const asked = valueOf(
  demonstrationWith({
    ranges: { [shares]: { low: '10', high: '30' }, 'price.fuel': { low: '5', high: '25' } },
    limits: [ash],
    scenarios: [
      scenario('both', { [shares]: figure('20', '%'), 'price.fuel': figure('15', 'EUR/GJ') }),
      scenario('optional', { 'recovered.limit.ash': figure('7', '%') }),
    ],
    uncertainty: {
      trials: 1000,
      seed: 1,
      years: 10,
      inputs: {
        [shares]: { law: 'uniform', low: '10', high: '30' },
        'price.fuel': { law: 'uniform', low: '5', high: '25' },
      },
      correlations: [{ one: shares, other: 'price.fuel', value: '0.5' }],
    },
  }),
);

describe('an edit of the structure', () => {
  it.each<{ what: string; edit: Edit }>([
    { what: 'the line goes', edit: { kind: 'remove line', route: 'recovered', line: 'mixed' } },
    // The balancing line has a share still, but nobody gives it: it takes what the others leave.
    { what: 'the line balances', edit: { kind: 'balance by line', route: 'recovered', line: 'mixed' } },
  ])('drops what names an input that is gone, and keeps the rest: $what', ({ edit }) => {
    const { content } = after(asked, edit);

    expect(Object.keys(content.ranges ?? {})).toEqual(['price.fuel']);
    expect(content.scenarios?.map(({ inputs }) => Object.keys(inputs))).toEqual([
      ['price.fuel'],
      ['recovered.limit.ash'],
    ]);
    expect(Object.keys(content.uncertainty?.inputs ?? {})).toEqual(['price.fuel']);
    expect(content.uncertainty?.correlations).toBeUndefined();
    expect(content.limits).toEqual([ash]);
  });

  it('leaves what-ifs alone that name nothing that is gone', () => {
    const { content } = after(asked, { kind: 'remove stage', route: 'recovered', line: 'mixed', stage: 'fine' });

    expect([content.ranges, content.scenarios, content.uncertainty]).toEqual([
      asked.content.ranges,
      asked.content.scenarios,
      asked.content.uncertainty,
    ]);
  });

  it('can remove a route that a limit names, and the limit goes with it', () => {
    const three = after(asked, { kind: 'duplicate route', route: 'recovered' });
    const limits = [
      { ...ash, id: 'own', route: 'recovered' },
      { ...ash, id: 'copy', route: 'recovered-2' },
    ];
    const limited = limits.reduce((from, limit) => after(from, { kind: 'put limit', limit }), three);
    const two = after(limited, { kind: 'remove route', route: 'recovered' });

    expect(two.content.limits?.map(({ id }) => id)).toEqual(['ash', 'copy']);
    expect(two.content.scenarios?.map(({ inputs }) => Object.keys(inputs))).toEqual([['price.fuel'], []]);
  });

  it('drops a limit whose result no route has any more', () => {
    const charged = { ...ash, id: 'own', result: 'mixed.yield', sense: 'at least' } as const;
    const limited = after(asked, { kind: 'put limit', limit: charged });
    const gone = after(limited, { kind: 'remove line', route: 'recovered', line: 'mixed' });

    expect(limited.content.limits?.map(({ id }) => id)).toEqual(['ash', 'own']);
    expect(gone.content.limits).toEqual([ash]);
  });
});

/** Asks about a tenth of all inputs in every way there is. */
function askedAtRandom(dice: Dice): OpenCase {
  const inputs = dice.some(open.model.graph.inputs, 0.1).flatMap((input) => {
    const value = input.given?.value ?? input.usual.value;
    return value === null || Number(value) === 0 ? [] : [{ id: input.id, value, unit: input.entryUnit }];
  });
  const wide = (value: string) => {
    const [low, high] = [0.99, 1.01].map((by) => String(Number((Number(value) * by).toPrecision(6))));
    return Number(value) > 0 ? { low: low!, high: value } : { low: value, high: high! };
  };
  return valueOf(
    demonstrationWith({
      ranges: Object.fromEntries(
        inputs.filter(({ value }) => Number(value) > 0).map(({ id, value }) => [id, wide(value)]),
      ),
      scenarios: [scenario('all', Object.fromEntries(inputs.map(({ id, value, unit }) => [id, figure(value, unit)])))],
      limits: [ash, { ...ash, id: 'route', route: dice.pick(open.content.routes).id }],
      uncertainty: {
        trials: 1000,
        seed: 1,
        years: 1,
        inputs: Object.fromEntries(inputs.map(({ id }) => [id, { law: 'fixed' as const }])),
        correlations: inputs.slice(1).map(({ id }, at) => ({ one: inputs[at]!.id, other: id, value: '0.1' })),
      },
    }),
  );
}

function randomEdit(dice: Dice, { content }: OpenCase): Edit {
  const { id: route, lines } = dice.pick(content.routes);
  const { id: line, recipe, stages } = dice.pick(lines);
  const stage = dice.pick(stages).id;
  const { material } = dice.pick(recipe);
  return dice.pick<Edit>([
    { kind: 'remove stage', route, line, stage },
    { kind: 'duplicate stage', route, line, stage },
    { kind: 'set up stage', route, line, stage, options: { levels: dice.pick([1, 2, null]) } },
    { kind: 'remove line', route, line },
    { kind: 'duplicate line', route, line },
    { kind: 'balance by line', route, line },
    { kind: 'remove grade', route, line, material },
    { kind: 'duplicate route', route },
    { kind: 'remove route', route },
  ]);
}

describe('edits of the structure at random, where much is asked about', () => {
  it('are never refused, and what they leave can be saved and read again', () => {
    const dice = new Dice(417);
    for (let round = 0; round < 8; round += 1) {
      let from = askedAtRandom(dice);
      for (let step = 0; step < 4; step += 1) {
        const edit = randomEdit(dice, from);
        const outcome = editStructure(from, edit);
        expect([round, edit, outcome.ok ? [] : outcome.problems]).toEqual([round, edit, []]);
        from = valueOf(outcome);
      }
      expect(valueOf(openCase(caseText(from))).content).toEqual(from.content);
    }
  });
});
