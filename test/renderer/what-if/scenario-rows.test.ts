import { describe, expect, it } from 'vitest';
import { NumberStyle } from '../../../renderer/numbers/number-style.ts';
import { brokenLimits } from '../../../renderer/screens/what-if/lower/scenarios/broken-limits.ts';
import { copiedScenario } from '../../../renderer/screens/what-if/lower/scenarios/copied-scenario.ts';
import { resultRows } from '../../../renderer/screens/what-if/lower/scenarios/result-rows.ts';
import { scenarioCells } from '../../../renderer/screens/what-if/lower/scenarios/scenario-cells.ts';
import { inputRows } from '../../../renderer/screens/what-if/lower/scenarios/scenario-rows.ts';
import {
  type OpenCase,
  caseText,
  changeInput,
  editStructure,
  openCase,
  scenarioTable,
  sensitivity,
  spreadOf,
} from '../../../src/index.ts';
import { writtenWhatIfs } from '../../../renderer/screens/what-if/lower/written-what-ifs.ts';
import { demonstration, valueOf } from '../../examples/demonstration.ts';
import { planText } from '../outlay/plan-case.ts';

const open = demonstration();
const numbers = new NumberStyle('en-GB', 'EUR');
const table = scenarioTable(open);
const rowsOf = (from: OpenCase, more: Parameters<typeof inputRows>[2] = null) =>
  inputRows(scenarioTable(from), spreadOf(from), more);
const withAsh = valueOf(
  editStructure(open, {
    kind: 'put scenario',
    scenario: { id: 'ash', label: 'Less ash', inputs: { 'recovered.limit.ash': { value: '7', unit: '%' } } },
  }),
);

describe('the rows of inputs', () => {
  it('are those that some scenario changes, with the figure of the case where it does not', () => {
    const fuel = rowsOf(open).find(({ id }) => id === 'price.fuel');

    expect(rowsOf(open)).toHaveLength(8);
    expect(fuel?.base).toBe('12.1');
    expect(fuel?.cells.map(({ isChanged, view }) => [isChanged, view.value, view.touched])).toEqual([
      [false, '12.1', false],
      [false, '12.1', false],
      [true, '16', true],
    ]);
  });

  it('grow by the inputs that move the result most and by those that were named, each once', () => {
    const movers = sensitivity(open, 'difference.total').judged;
    const rows = rowsOf(open, { movers, named: ['product.tonnes', 'price.fuel'] });
    const ids = rows.map(({ id }) => id);

    expect(ids.slice(0, 8)).toEqual(table.inputs.map(({ id }) => id));
    for (const { id } of movers.slice(0, 12)) expect(ids).toContain(id);
    expect(ids.at(-1)).toBe('product.tonnes');
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('say where the figure of a scenario comes from, and ask for no source in its slot', () => {
    const rows = rowsOf(open, { movers: [], named: ['carbon.grid'] });
    const cell = rows.find(({ id }) => id === 'price.fuel')?.cells[2];
    const grid = rows.find(({ id }) => id === 'carbon.grid')?.cells[0];

    expect(cell?.view).toMatchObject({ status: 'invented', source: 'Demonstration' });
    expect(spreadOf(open).inputs['carbon.grid']).toHaveProperty('boundary');
    expect(grid?.view).not.toHaveProperty('boundary');
  });

  it('hold an input that exists in a scenario only, with no figure in the case', () => {
    const ash = rowsOf(withAsh).find(({ id }) => id === 'recovered.limit.ash');

    expect(ash).toMatchObject({ label: 'Ash, at most', unit: '%', base: '' });
    expect(ash?.cells.map(({ isChanged, view }) => [isChanged, view.value])).toEqual([
      [false, ''],
      [false, ''],
      [false, ''],
      [true, '7'],
    ]);
  });

  it('show what a scenario gives although it cannot be worked out', () => {
    const nameless = { id: 'grid', label: 'Grid', inputs: { 'carbon.grid': { value: '0.2', unit: 'kgCO2e/kWh' } } };
    const [row] = rowsOf(valueOf(editStructure(open, { kind: 'put scenario', scenario: nameless }))).filter(
      ({ id }) => id === 'carbon.grid',
    );

    expect(row?.cells.at(-1)).toMatchObject({ isChanged: true, view: { value: '0.2' } });
  });
});

describe('the rows of results', () => {
  const rows = resultRows(table, numbers);
  const row = (id: string) => rows.find((each) => each.id === id)!;

  it('show the difference of the totals shown, in every column', () => {
    row('difference.total').values.forEach((value, place) => {
      const [base, other] = [row('virgin.cost.total').values[place]!, row('recovered.cost.total').values[place]!];
      expect(value).toBeCloseTo(other - base, 9);
      expect(Number(value.toFixed(2))).toBe(value);
    });
  });

  it('are as on the home page for the case as it stands', () => {
    const spread = spreadOf(open);

    expect(row('difference.total').values[0]).toBe(Number(spread.difference.shownPerTonne));
    expect(row('difference.totalPerYear').values[0]).toBe(Number(spread.difference.shownPerYear));
  });

  it('say how far each figure shown is from the one of the case', () => {
    const cost = row('virgin.cost.total');

    expect(cost.less[0]).toBe(0);
    cost.less.forEach((less, place) => expect(less).toBeCloseTo(cost.values[place]! - cost.values[0]!, 9));
  });

  it('count money of a year in millions and carbon in whole kilograms', () => {
    expect(row('difference.totalPerYear')).toMatchObject({ unit: '€ million/year', decimals: 2 });
    expect(row('virgin.footprint.total').values[0]).toBe(1315);
  });

  it('stay not a number where a scenario cannot be worked out', () => {
    const broken = {
      ...table,
      columns: table.columns.map((column) => ({ ...column, values: table.results.map(() => NaN) })),
    };

    expect(
      resultRows(broken, numbers)
        .flatMap(({ values, less }) => [...values, ...less])
        .every(Number.isNaN),
    ).toBe(true);
  });
});

describe('the limits that a scenario breaks', () => {
  it('are named once, with the routes that break them', () => {
    const more = { 'recovered.mixed.share': { value: '38', unit: '%' } } as const;
    const asked = valueOf(
      editStructure(open, { kind: 'put scenario', scenario: { id: 'more', label: 'More', inputs: more } }),
    );
    const columns = scenarioTable(asked).columns;

    expect(brokenLimits(columns[0]!)).toEqual([]);
    expect(brokenLimits(columns.at(-1)!)).toContain('Ash of the board (Recovered middle ply)');
  });
});

describe('scenarios as cells', () => {
  it('are a full table: a heading, inputs, results twice, limits', () => {
    const cells = scenarioCells(table, rowsOf(open), resultRows(table, numbers), (unit) => numbers.unit(unit));

    expect(cells).toHaveLength(1 + 8 + 2 * 7 + 1);
    expect(new Set(cells.map(({ length }) => length))).toEqual(new Set([6]));
    expect(cells[0]).toEqual(['', 'unit', 'as the case stands', 'Pulp falls', 'Paper is scarce', 'Power doubles']);
  });
});

describe('what the case has written', () => {
  it('is read from its text, as the engine holds it', () => {
    expect(writtenWhatIfs(caseText(open))).toEqual({
      scenarios: open.content.scenarios,
      limits: open.content.limits,
    });
  });

  it('is nothing where nothing was asked', () => {
    expect(writtenWhatIfs('{"format":"tonne"}')).toEqual({ scenarios: [], limits: [] });
  });
});

describe('a copy of a scenario', () => {
  it('has the same figures, a label that says so and an id of its own', () => {
    const [first] = open.content.scenarios!;
    const copy = copiedScenario(first!, ['pulp-falls-copy']);

    expect(copy).toEqual({ ...first, id: 'pulp-falls-copy-2', label: 'Pulp falls (copy)' });
    expect(copiedScenario({ ...first!, label: 'y'.repeat(200) }, []).label).toHaveLength(200);
  });
});

describe('the present value of the plan', () => {
  const plan = valueOf(openCase(planText));
  const row = resultRows(scenarioTable(plan), numbers).find(({ id }) => id === 'investment.npv');
  const millionOf = (from: OpenCase) => Math.round(from.values.number('investment.npv') / 1e4) / 100;

  it('has a row in millions where there is a plan, and none where there is not', () => {
    expect(row).toMatchObject({ where: '', unit: '€ million', decimals: 2 });
    expect(resultRows(table, numbers).map(({ id }) => id)).not.toContain('investment.npv');
  });

  it('is that of the case, and in a scenario what typing its figures would give', () => {
    const [first] = plan.content.scenarios ?? [];
    const typed = Object.entries(first?.inputs ?? {}).reduce(
      (open, [id, { value }]) => valueOf(changeInput(open, id, value)),
      plan,
    );

    expect(row?.values[0]).toBe(millionOf(plan));
    expect(row?.values[1]).toBe(millionOf(typed));
    expect(row?.values[1]).not.toBe(row?.values[0]);
  });
});
