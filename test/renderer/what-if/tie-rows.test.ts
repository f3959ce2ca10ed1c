import { describe, expect, it } from 'vitest';
import { NumberStyle } from '../../../renderer/numbers/number-style.ts';
import { tieCells } from '../../../renderer/screens/what-if/lower/ties/tie-cells.ts';
import { tieRows } from '../../../renderer/screens/what-if/lower/ties/tie-rows.ts';
import { tieScenario } from '../../../renderer/screens/what-if/lower/ties/tie-scenario.ts';
import { type BreakEven, changeInput, editStructure, openCase, sensitivity, ties } from '../../../src/index.ts';
import { demonstration, valueOf } from '../../examples/demonstration.ts';
import { demonstrationSpread } from '../open-demonstration.ts';

const open = demonstration();
const spread = demonstrationSpread();
const numbers = new NumberStyle('en-GB', 'EUR');
const today = sensitivity(open, 'difference.total');
const largest = today.judged.slice(0, 12);
const found = ties(
  open,
  'difference.total',
  largest.map(({ id }) => id),
);
const tie = (more: Partial<BreakEven>): BreakEven => ({
  id: 'price.fuel',
  label: 'Fuel',
  where: '',
  unit: 'EUR/GJ',
  figure: 10,
  from: 0,
  to: 40,
  crossings: [],
  usual: null,
  ...more,
});
const row = (more: Partial<BreakEven>, base = -60, result = 'difference.total') =>
  tieRows([tie(more)], { ...today, base, result }, spread, numbers)[0];

describe('the rows of ties', () => {
  it('have those that tie first, and keep the order of the swings in each group', () => {
    const rows = tieRows(found, today, spread, numbers);
    const kinds = rows.map(({ nearest }) => nearest !== null);

    expect(kinds).toEqual([...kinds].sort((a, b) => Number(b) - Number(a)));
    expect(new Set(kinds)).toEqual(new Set([true, false]));
    expect(rows[0]).toMatchObject({ id: 'material.bctmp.price', today: '545', ties: ['440'], unit: '€/adt' });
  });

  it('say how far away the tie is, in per cent of today', () => {
    expect(row({ crossings: [8.8] })?.away).toBe('−12\u00a0%');
    expect(row({ crossings: [24] })?.away).toBe('+140\u00a0%');
    expect(row({ crossings: [10.25] })?.away).toBe('+2.5\u00a0%');
    // From −80 to −60 the figure rises by a quarter of its size.
    expect(row({ figure: -80, crossings: [-60] })?.away).toBe('+25\u00a0%');
  });

  it('say it in the unit of the input where today is nothing', () => {
    expect(row({ figure: 0, crossings: [3.5] })?.away).toBe('+3.5\u00a0€/GJ');
  });

  it('let the one that loses today win beyond the tie', () => {
    // Recovered less virgin is negative: recovered wins today.
    expect(row({ crossings: [8] })?.wins).toBe('virgin wins below');
    expect(row({ crossings: [12] })?.wins).toBe('virgin wins above');
    expect(row({ crossings: [12] }, 60)?.wins).toBe('recovered wins above');
    expect(row({ crossings: [12] }, -216, 'difference.footprint.total')?.wins).toBe('virgin emits less above');
  });

  it('say whether the plan pays or loses beyond the point where it earns nothing', () => {
    const plan = (base: number, crossing: number) => row({ crossings: [crossing] }, base, 'investment.npv')?.wins;

    // A plan of a present value above nothing pays today.
    expect(plan(38.7e6, 8)).toBe('the plan loses below');
    expect(plan(38.7e6, 12)).toBe('the plan loses above');
    expect(plan(-38.7e6, 12)).toBe('the plan pays above');
    expect(row({ crossings: [12, 30] }, -1, 'investment.npv')?.wins).toBe('the plan pays from 12 to 30');
  });

  it('list all ties, and say how far the nearest one holds', () => {
    expect(row({ crossings: [4, 12, 30] })).toMatchObject({
      ties: ['4', '12', '30'],
      nearest: 12,
      wins: 'virgin wins from 12 to 30',
    });
    expect(row({ crossings: [4, 9] })).toMatchObject({ nearest: 9, wins: 'virgin wins from 4 to 9' });
  });

  it('say none with the range that was searched', () => {
    expect(row({})).toMatchObject({ ties: [], nearest: null, likely: null, searched: 'from 0 to 40 €/GJ', away: '' });
  });

  it('say whether it is likely, or that nobody knows', () => {
    expect([true, false, null].map((usual) => row({ crossings: [12], usual })?.likely)).toEqual([
      'usual',
      'beyond',
      'unknown',
    ]);
  });

  it('say nobody wins where the routes tie today', () => {
    expect(row({ crossings: [10] }, 0)?.wins).toBe('');
  });
});

describe('a scenario made of a tie', () => {
  const bctmp = found.find(({ id }) => id === 'material.bctmp.price')!;
  const words = { name: 'Pulp, net price agreed', figure: '440', title: 'Where the two routes cost the same' };
  const made = tieScenario(bctmp, bctmp.crossings[0]!, words, ['pulp-net-price-agreed-at-440']);

  it('has a name of its own and the figure where the routes tie', () => {
    expect(made.label).toBe('Pulp, net price agreed at 440');
    expect(made.id).toBe('pulp-net-price-agreed-at-440-2');
    expect(Object.keys(made.inputs)).toEqual(['material.bctmp.price']);
  });

  it('is taken by the case, and its figure makes the routes tie to the cent', () => {
    const taken = valueOf(editStructure(open, { kind: 'put scenario', scenario: made }));
    const figure = taken.content.scenarios?.at(-1)?.inputs['material.bctmp.price'];
    const typed = valueOf(changeInput(open, 'material.bctmp.price', figure?.value ?? ''));

    expect(Math.abs(typed.values.number('difference.total'))).toBeLessThan(0.005);
    expect(openCase(JSON.stringify({ format: 'tonne', version: 1, ...taken.content })).ok).toBe(true);
  });

  it('keeps a label of full length within what a case may hold', () => {
    const long = tieScenario(bctmp, 440, { ...words, name: 'x'.repeat(300) }, []);

    expect(long.label).toHaveLength(200);
    expect(long.label.endsWith(' at 440')).toBe(true);
  });
});

describe('the ties as cells', () => {
  it('are headed as on the page', () => {
    expect(tieCells([], [], 'nothing at')[0]?.[3]).toBe('nothing at');
  });

  it('have a row for every tie, and words only where there is none', () => {
    const several = [tie({ crossings: [4, 12] }), tie({ id: 'price.carbon' })];
    const cells = tieCells(tieRows(several, { ...today, base: -60 }, spread, numbers), several, 'ties at');

    expect(cells.map((line) => line[3])).toEqual(['ties at', 4, 12, 'none']);
    expect(new Set(cells.map(({ length }) => length))).toEqual(new Set([8]));
  });
});
