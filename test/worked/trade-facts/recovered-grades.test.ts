import { describe, expect, test } from 'vitest';
import type { Case, Material } from '../../../src/case/case.ts';
import { editStructure, materialChoices, startCase } from '../../../src/index.ts';
import { checksOf } from '../../../src/study/checks.ts';
import { workOut } from '../../../src/study/open-case.ts';
import { valueOf } from '../../examples/demonstration.ts';

// Common practice, no source: recovered paper is traded in five groups (ordinary, medium, high, kraft and special grades), and in 2020
// in some 56 grades; EN 643 numbers them by group and place, "1.05".
const grades = materialChoices().filter(({ origin }) => origin === 'post-consumer' || origin === 'pre-consumer');
const groupsOf = (group: string): readonly number[] =>
  [...group.matchAll(/\b(\d)\.\d{2}\b/gu)].map(([, number]) => Number(number));

describe('grades of recovered paper', () => {
  test.each(grades)('$id stands in one of the five groups: $group', ({ group }) => {
    const groups = new Set(groupsOf(group));

    expect(group.startsWith('EN 643 ')).toBe(true);
    expect(groups.size).toBe(1);
    expect([1, 2, 3, 4, 5]).toContain([...groups][0]);
  });

  test('are in the list from ordinary, medium and high grades, before and after use', () => {
    expect(new Set(grades.flatMap(({ group }) => groupsOf(group)))).toEqual(new Set([1, 2, 3]));
    expect(new Set(grades.map(({ origin }) => origin))).toEqual(new Set(['pre-consumer', 'post-consumer']));
  });

  test('are told apart from pulp and from broke, which no group holds', () => {
    const others = materialChoices().filter(({ origin }) => origin === 'virgin' || origin === 'own broke');

    expect(others.length).toBeGreaterThanOrEqual(5);
    expect(others.flatMap(({ group }) => groupsOf(group))).toEqual([]);
  });
});

describe("a grade of the user's own", () => {
  const kraftSacks: Material = {
    id: 'sacks',
    label: 'Used kraft sacks',
    origin: 'post-consumer',
    price: { basis: 'as received', kind: 'net' },
    settlement: 'as weighed',
  };
  const start = valueOf(
    startCase({
      title: 'With sacks',
      virgin: 'kraftliner',
      recovered: 'testliner',
      tonnesPerYear: '100000',
      currency: 'EUR',
      priceYear: '2024',
    }),
  ).content;
  const figures = {
    'material.sacks.price': { value: '180', unit: 'EUR/t-ar' },
    'material.sacks.moisture': { value: '9', unit: '%' },
    'material.sacks.lights': { value: '3', unit: '%' },
  };

  test('can be mixed into a line of the list, and the laws hold', () => {
    const wider: Case = { ...start, materials: [...start.materials, kraftSacks] };
    const added = valueOf(
      editStructure(valueOf(workOut(wider)), { kind: 'add grade', route: 'recovered', line: 'occ', material: 'sacks' }),
    );
    const open = valueOf(
      workOut({
        ...added.content,
        inputs: {
          ...added.content.inputs,
          ...figures,
          'recovered.occ.grade.sacks.share': { value: '25', unit: '%' },
        },
      }),
    );

    expect(open.gaps).toEqual([]);
    expect(checksOf(open).filter(({ kept }) => !kept)).toEqual([]);
    expect(open.values.number('recovered.occ.grade.occ.share')).toBeCloseTo(0.75, 12);
    expect(open.values.number('recovered.bought.sacks')).toBeCloseTo(
      0.25 * open.values.number('recovered.occ.feed'),
      12,
    );
  });
});
