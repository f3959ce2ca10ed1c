import { describe, expect, test } from 'vitest';
import type { Material } from '../../../src/case/case.ts';
import type { PriceMonths } from '../../../src/case/price-months.ts';
import { writeCase } from '../../../src/case/write-case.ts';
import { editStructure } from '../../../src/study/edit-structure.ts';
import { monthResults } from '../../../src/study/months/month-results.ts';
import { usualMonthInputs } from '../../../src/study/months/usual-month-inputs.ts';
import { type OpenCase, changeInput, openCase } from '../../../src/study/open-case.ts';
import { whatIfTable } from '../../../src/study/what-if-table.ts';
import { monthsSentence } from '../../../src/wording/month-sentences.ts';
import { problemSentence } from '../../../src/wording/problem-sentence.ts';
import { valueOf } from '../../examples/demonstration.ts';
import { smallCase } from '../../support/small-case.ts';

const perDryTonne: Partial<Material> = { price: { basis: 'bone-dry', kind: 'net' } };

/** Route "other" is all pulp and route "mill" all paper; both take one bone-dry tonne, and nothing else differs: the difference is paper less pulp. */
function pulpAgainstPaper(): OpenCase {
  const content = smallCase({
    stages: [{ id: 'slush', like: 'pumps' }],
    materials: [
      { ...perDryTonne, id: 'pulp', label: 'Pulp', origin: 'virgin' },
      { ...perDryTonne, id: 'paper' },
    ],
    figures: {
      'mill.line.grade.paper.share': '100 %',
      'other.line.grade.paper.share': '0 %',
      'material.pulp.price': '600 EUR/bdt',
      'material.paper.price': '550 EUR/bdt',
      'material.pulp.moisture': '0 %',
      'material.paper.moisture': '0 %',
    },
  });
  return valueOf(openCase(writeCase(content)));
}

const inputs = { pulp: 'material.pulp.price', recovered: 'material.paper.price' } as const;
const months = (...points: readonly (readonly [string, number, number])[]): PriceMonths => ({
  ...inputs,
  points: points.map(([month, pulp, recovered]) => ({ month, pulp: String(pulp), recovered: String(recovered) })),
});
const withMonths = (given: PriceMonths): OpenCase =>
  valueOf(editStructure(pulpAgainstPaper(), { kind: 'set months', months: given }));

// Worked by hand: the difference of a month is its price of paper less its price of pulp.
describe('months on the plane of two prices', () => {
  const four = months(['2024-01', 600, 550], ['2024-02', 580, 590], ['2024-03', 640.5, 600], ['2024-04', 610, 610]);

  test('are each worked out at both of their prices', () => {
    const found = monthResults(pulpAgainstPaper(), 'difference.total', four);

    expect(found.months.map(({ value }) => Number(value.toFixed(6)))).toEqual([-50, 10, -40.5, 0]);
    expect(found).toMatchObject({ below: 2, above: 1, even: 1, unknown: 0 });
  });

  test('come to what the case says where their prices are those of the case', () => {
    const open = pulpAgainstPaper();

    expect(open.values.number('difference.total')).toBeCloseTo(-50, 9);
    expect(monthResults(open, 'difference.total', months(['now', 600, 550])).months[0]?.value).toBeCloseTo(-50, 9);
  });

  test('say that recovered was cheaper in 17 of 24 months', () => {
    const two = Array.from(
      { length: 24 },
      (_, place) => [`month ${String(place)}`, 600, place < 17 ? 599 : 601] as const,
    );
    const found = monthResults(pulpAgainstPaper(), 'difference.total', months(...two));

    expect(monthsSentence(found, { base: 'virgin', other: 'recovered' })).toBe(
      'Recovered was cheaper in 17 of 24 months; virgin in 7.',
    );
  });

  test('count other figures as they are in force', () => {
    const dearer = valueOf(changeInput(pulpAgainstPaper(), 'material.paper.freight', '60 EUR/t-ar'));

    expect(monthResults(dearer, 'difference.total', four).months[0]?.value).toBeCloseTo(10, 9);
  });
});

describe('a table whose sides are the two prices', () => {
  const open = withMonths(months(['low', 400, 300], ['high', 900, 800]));

  test('holds every month within half a cell of its ends, at its place', () => {
    const table = whatIfTable(open, 'difference.total', inputs.pulp, inputs.recovered, { columns: 7, rows: 9 });
    const [low, high] = table?.points ?? [];
    const { figures } = table!.across;
    const step = (figures.at(-1)! - figures[0]!) / (figures.length - 1);

    expect(low?.place[0]).toBeCloseTo((400 - figures[0]!) / step, 9);
    for (const { place } of [low!, high!]) {
      expect(place[0]).toBeGreaterThanOrEqual(-0.5);
      expect(place[0]).toBeLessThanOrEqual(figures.length - 0.5);
      expect(place[1]).toBeGreaterThanOrEqual(-0.5);
      expect(place[1]).toBeLessThanOrEqual(table!.down.figures.length - 0.5);
    }
    expect(low?.value).toBeCloseTo(-100, 9);
  });

  test('may have them the other way round', () => {
    const size = { columns: 7, rows: 7 };
    const upright = whatIfTable(open, 'difference.total', inputs.pulp, inputs.recovered, size);
    const turned = whatIfTable(open, 'difference.total', inputs.recovered, inputs.pulp, size);

    expect(turned?.points.map(({ place }) => place.toReversed())).toEqual(upright?.points.map(({ place }) => place));
  });

  test('has no months where a side is another input, and its ends do not move', () => {
    const size = { columns: 7, rows: 7 };
    const other = (of: OpenCase) => whatIfTable(of, 'difference.total', inputs.pulp, 'price.heat', size);

    expect(other(open)?.points).toEqual([]);
    expect(other(open)).toEqual(other(pulpAgainstPaper()));
  });
});

describe('months in a case', () => {
  test('are kept in its file, and read again', () => {
    const open = withMonths(months(['2024-01', 600, 550.25]));

    expect(valueOf(openCase(writeCase(open.content))).content.months).toEqual(open.content.months);
  });

  test('go when they are taken away', () => {
    const without = editStructure(withMonths(months(['2024-01', 600, 550])), { kind: 'set months', months: null });

    expect(writeCase(valueOf(without).content)).toBe(writeCase(pulpAgainstPaper().content));
  });

  test.each([
    [{ ...months(['a', 1, 2]), pulp: 'material.pulpe.price' }, /There is no input "material.pulpe.price"/u],
    [{ ...months(['a', 1, 2]), pulp: inputs.recovered }, /allowed is another input than "pulp"/u],
    [{ ...months(['a', 1, 2]), points: [] }, /at least one month/u],
  ])('are refused in words where they cannot be: %#', (given, sentence) => {
    const refused = editStructure(pulpAgainstPaper(), { kind: 'set months', months: given });

    expect(refused.ok ? '' : refused.problems.map(problemSentence).join()).toMatch(sentence);
  });

  test('are of the pulp and the recovered paper that the routes buy most of, unless somebody says otherwise', () => {
    expect(usualMonthInputs(pulpAgainstPaper())).toEqual(inputs);
  });
});
