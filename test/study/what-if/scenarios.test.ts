import { describe, expect, it } from 'vitest';
import {
  type OpenCase,
  type ScenarioTable,
  caseText,
  changeInput,
  changeScenario,
  editStructure,
  openCase,
  problemSentence,
  scenarioTable,
} from '../../../src/index.ts';
import { demonstration, problemsOf, valueOf } from '../../examples/demonstration.ts';
import { demonstrationWith, figure, scenario } from './what-if-cases.ts';

const open = demonstration();
const power = scenario('power', { 'price.electricity': figure('0.2', 'EUR/kWh') });
const wetter = scenario('wetter', { 'material.mixed.moisture': figure('14', '%') });

function cell(table: ScenarioTable, id: string, scenarioId: string | null): number {
  const row = table.results.findIndex((each) => each.id === id);
  return table.columns.find((each) => (each.scenario?.id ?? null) === scenarioId)?.values[row] ?? NaN;
}
const sentences = (outcome: ReturnType<typeof changeScenario>): string =>
  problemsOf(outcome).map(problemSentence).join(' ');

describe('the table of scenarios', () => {
  const asked = valueOf(demonstrationWith({ scenarios: [power, wetter] }));
  const table = scenarioTable(asked);

  it('has the case as it stands first, then every scenario in its order', () => {
    expect(table.columns.map((each) => each.scenario?.id ?? null)).toEqual([null, 'power', 'wetter']);
    expect(table.columns.map(({ changes }) => changes)).toEqual([0, 1, 1]);
  });

  it('has a row for every input that any of them changes, with the figure in force in each', () => {
    expect(table.inputs.map(({ id }) => id)).toEqual(['price.electricity', 'material.mixed.moisture']);
    expect(table.columns.map(({ figures }) => figures)).toEqual([
      ['0.118', '10'],
      ['0.2', '10'],
      ['0.118', '14'],
    ]);
  });

  it('shows what typing the figures into the case would give, and the case itself as it is', () => {
    const typed = valueOf(changeInput(asked, 'price.electricity', '0.2'));
    for (const id of ['virgin.cost.total', 'recovered.cost.total', 'difference.total', 'difference.footprint.total']) {
      expect(cell(table, id, 'power')).toBeCloseTo(typed.values.number(id), 9);
      expect(cell(table, id, null)).toBe(asked.values.number(id));
    }
  });

  it('moves by the electricity bought times its price, and by nothing else that power pays for', () => {
    // What is bought stands in the case; price goes from 0.118 to 0.2 EUR/kWh, which is 0.082 a kWh.
    const bought = (route: string): number => asked.values.number(`${route}.electricity.total`);
    const moved = cell(table, 'virgin.cost.total', 'power') - cell(table, 'virgin.cost.total', null);

    expect(moved).toBeCloseTo(0.082 * bought('virgin'), 6);
  });

  it('keeps the year the tonne times the tonnes of the year', () => {
    expect(cell(table, 'difference.totalPerYear', 'wetter')).toBeCloseTo(
      cell(table, 'difference.total', 'wetter') * asked.values.number('product.tonnes'),
      3,
    );
  });

  it('reads the limits of the case in every scenario', () => {
    const limits = open.content.limits ?? [];
    const more = scenario('more', { 'recovered.mixed.share': figure('38', '%') });
    const read = scenarioTable(valueOf(demonstrationWith({ limits, scenarios: [more] })));
    const broken = read.columns.map((each) =>
      each.limits.filter(({ kept, value }) => value > 0 && !kept).map(({ limit }) => limit.id),
    );

    expect(broken[0]).toEqual([]);
    // The ash binds from 55.6 % of recovered stock; here it is 62 %.
    expect(broken[1]).toEqual(['ash']);
  });

  it('tells why a scenario cannot be worked out, and works the others out all the same', () => {
    // A carbon factor must name its source; nobody notices before the scenario stands in the case.
    const nameless = {
      id: 'grid',
      label: 'Another grid',
      inputs: { 'carbon.grid': { value: '0.2', unit: 'kgCO2e/kWh' } },
    };
    const read = scenarioTable(valueOf(demonstrationWith({ scenarios: [nameless, power] })));
    const [, grid, other] = read.columns;

    expect(grid?.problems.map(problemSentence).join(' ')).toContain('must name its source');
    expect(grid?.values.every(Number.isNaN)).toBe(true);
    expect(other?.problems).toEqual([]);
    expect(other?.values.some(Number.isNaN)).toBe(false);
  });

  it('is only the case where there are no scenarios', () => {
    const alone = scenarioTable(valueOf(demonstrationWith({})));

    expect(alone.columns).toHaveLength(1);
    expect(alone.inputs).toEqual([]);
    expect(alone.results).toHaveLength(7);
  });

  it('says not a number where a price is missing, as the case itself does', () => {
    const shares = scenario('shares', { 'recovered.mixed.share': figure('90', '%') });
    const read = scenarioTable(valueOf(demonstrationWith({ scenarios: [shares] })));

    // The other lines already take more than the tenth that is left: the route cannot be made.
    expect(cell(read, 'recovered.cost.total', 'shares')).toBeNaN();
    expect(cell(read, 'virgin.cost.total', 'shares')).toBeCloseTo(cell(read, 'virgin.cost.total', null), 9);
  });
});

describe('a scenario with an input that exists only once it is given', () => {
  const ash = valueOf(demonstrationWith({ scenarios: [scenario('ash', {})] }));
  const given = valueOf(changeScenario(ash, 'ash', 'recovered.limit.ash', '7 %'));

  it('is taken, written and read again', () => {
    expect(given.content.scenarios?.[0]?.inputs['recovered.limit.ash']).toMatchObject({ value: '7', unit: '%' });
    expect(valueOf(openCase(caseText(given))).content).toEqual(given.content);
  });

  it('stands in the table with no figure in the case', () => {
    const table = scenarioTable(given);

    expect(table.inputs).toMatchObject([{ id: 'recovered.limit.ash', unit: '%' }]);
    expect(table.columns.map(({ figures }) => figures)).toEqual([[''], ['7']]);
  });

  it('survives edits that have nothing to do with it', () => {
    const renamed = valueOf(editStructure(given, { kind: 'rename route', route: 'virgin', label: 'Pulp' }));

    expect(renamed.content.scenarios).toEqual(given.content.scenarios);
  });
});

describe('changing a figure of a scenario', () => {
  const asked = valueOf(demonstrationWith({ scenarios: [power, wetter] }));
  const inputsOf = (from: OpenCase, id: string) => from.content.scenarios?.find((each) => each.id === id)?.inputs;

  it('leaves the case and the other scenarios as they were', () => {
    const changed = valueOf(changeScenario(asked, 'power', 'price.fuel', '15'));

    expect(inputsOf(changed, 'power')).toMatchObject({
      'price.electricity': { value: '0.2' },
      'price.fuel': { value: '15', unit: 'EUR/GJ', source: 'Scenario: Scenario power' },
    });
    expect(inputsOf(changed, 'wetter')).toEqual(wetter.inputs);
    expect(changed.content.inputs).toEqual(asked.content.inputs);
    expect(changed.values.exact('difference.total')).toBe(asked.values.exact('difference.total'));
  });

  it('takes another unit of the same kind and keeps the own one: 150 EUR/MWh is 0.15 EUR/kWh', () => {
    const changed = valueOf(changeScenario(asked, 'power', 'price.electricity', '150 EUR/MWh'));

    expect(inputsOf(changed, 'power')?.['price.electricity']).toMatchObject({ value: '0.15', unit: 'EUR/kWh' });
  });

  it('takes a figure away, so that the one of the case holds again', () => {
    const changed = valueOf(changeScenario(asked, 'power', 'price.electricity', null));

    expect(inputsOf(changed, 'power')).toEqual({});
    expect(scenarioTable(changed).columns[1]?.changes).toBe(0);
  });

  it.each([
    { what: 'words', id: 'price.fuel', typed: 'dear', said: '"dear" is not a number' },
    { what: 'another kind of unit', id: 'price.fuel', typed: '12 kWh', said: 'is another kind of unit' },
    { what: 'what cannot be', id: 'material.mixed.moisture', typed: '120', said: 'allowed is at least 0 % and below' },
    { what: 'an unknown input', id: 'price.fule', typed: '12', said: 'There is no input "price.fule"' },
  ])('is refused in words: $what', ({ id, typed, said }) => {
    expect(sentences(changeScenario(asked, 'power', id, typed))).toContain(said);
  });

  it('is refused where there is no such scenario', () => {
    expect(sentences(changeScenario(asked, 'nowhere', 'price.fuel', '12'))).toContain(
      'there is no scenario "nowhere"; there are "power", "wetter"',
    );
  });

  it('mends a scenario that cannot be worked out', () => {
    const nameless = { id: 'grid', label: 'Grid', inputs: { 'carbon.grid': { value: '0.2', unit: 'kgCO2e/kWh' } } };
    const broken = valueOf(demonstrationWith({ scenarios: [nameless] }));
    const mended = valueOf(changeScenario(broken, 'grid', 'carbon.grid', '0.25'));

    expect(scenarioTable(mended).columns[1]?.problems).toEqual([]);
  });
});
