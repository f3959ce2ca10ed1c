import { describe, expect, it } from 'vitest';
import { readCase } from '../../src/case/read-case.ts';
import { type Loose, at, problemsAfter, problemsOf, sample, sampleText } from './sample-case.ts';

const figureForm =
  'a plain number written as text, such as "12.5", with at most 120 characters and an exponent from -30 to 30';

describe('a file with many mistakes', () => {
  it('is told all of them at once, each with its place', () => {
    const problems = problemsAfter((content) => {
      delete content['title'];
      content['colour'] = 'brown';
      content['flavour'] = 'none';
      content['currency'] = 'euro';
      content['priceYear'] = 2024;
      content['chemicals'] = {};
      at(content, 'product')['machine'] = '';
      at(content, 'materials.0')['origin'] = 'moon';
      at(content, 'materials.1')['id'] = 'kraft';
      at(content, 'materials.2.price')['basis'] = null;
      at(content, 'routes.0.lines.0.recipe.0')['material'] = 'straw';
      at(content, 'routes.0')['balance'] = 'nowhere';
      at(content, 'routes.1.lines.0.stages.1')['levels'] = 9;
      at(content, 'routes.1.charges.0')['avoidable'] = 'yes';
      at(content, 'routes.1')['machineChemicals'] = ['retention', 'retention'];
      at(content, 'compare')['with'] = 'elsewhere';
      at(content, 'inputs')['price.heat'] = { value: 16, unit: 'EUR/GJ', colour: 'red' };
      at(content, 'inputs')['product.tonnes'] = { value: '40,000', unit: 't/a', status: 'sure' };
    });

    const expected = [
      { kind: 'missing', path: 'title' },
      { kind: 'unknown key', path: 'colour' },
      { kind: 'unknown key', path: 'flavour' },
      { kind: 'wrong form', path: 'currency', given: '"euro"', allowed: 'a currency code of three capital letters' },
      { kind: 'wrong form', path: 'priceYear', given: '2024', allowed: 'a year of four digits' },
      { kind: 'wrong form', path: 'chemicals', given: '{}', allowed: 'a list in square brackets' },
      { kind: 'wrong form', path: 'product.machine', given: '""', allowed: 'at least one character' },
      {
        kind: 'wrong form',
        path: 'materials.0.origin',
        given: '"moon"',
        allowed: 'virgin, pre-consumer, post-consumer, own broke',
      },
      { kind: 'said twice', path: 'materials', given: 'kraft' },
      {
        kind: 'wrong form',
        path: 'materials.2.price.basis',
        given: 'null',
        allowed: 'as received, air-dry, bone-dry',
      },
      {
        kind: 'unknown reference',
        path: 'routes.0.lines.0.recipe.0.material',
        given: 'straw',
        what: 'material',
        known: ['kraft', 'kraft', 'clippings'],
      },
      {
        kind: 'unknown reference',
        path: 'routes.1.lines.0.recipe.0.material',
        given: 'yard',
        what: 'material',
        known: ['kraft', 'kraft', 'clippings'],
      },
      { kind: 'unknown reference', path: 'routes.0.balance', given: 'nowhere', what: 'line', known: ['kraft'] },
      {
        kind: 'wrong form',
        path: 'routes.1.lines.0.stages.1.levels',
        given: '9',
        allowed: 'a whole number from 1 to 5',
      },
      { kind: 'wrong form', path: 'routes.1.charges.0.avoidable', given: '"yes"', allowed: 'true or false' },
      { kind: 'said twice', path: 'routes.1.machineChemicals', given: 'retention' },
      { kind: 'unknown reference', path: 'compare.with', given: 'elsewhere', what: 'route', known: ['bales', 'yard'] },
      { kind: 'unknown key', path: 'inputs.price.heat.colour' },
      { kind: 'wrong form', path: 'inputs.price.heat.value', given: '16', allowed: figureForm },
      { kind: 'wrong form', path: 'inputs.product.tonnes.value', given: '"40,000"', allowed: figureForm },
      {
        kind: 'wrong form',
        path: 'inputs.product.tonnes.status',
        given: '"sure"',
        allowed: 'measured, definition, read, derived, memory, practice, invented, none',
      },
    ];
    expect(problems).toEqual(expect.arrayContaining(expected));
    expect(problems).toHaveLength(expected.length);
  });
});

describe('an unknown key', () => {
  const groups = [
    '',
    'product',
    'compare',
    'inputs.price.heat',
    'materials.0',
    'materials.1.price',
    'chemicals.0',
    'destinations.2',
    'routes.1',
    'routes.1.lines.0',
    'routes.1.lines.0.recipe.1',
    'routes.1.lines.0.stages.3',
    'routes.1.additives.0',
    'routes.1.charges.0',
  ];
  // The ids of inputs hold dots, so the group of one input is fetched apart.
  const groupAt = (content: unknown, path: string) => {
    if (path === '') return content as Record<string, unknown>;
    return path === 'inputs.price.heat'
      ? (at(content, 'inputs')['price.heat'] as Record<string, unknown>)
      : at(content, path);
  };

  it.each(groups)('is refused in "%s"', (path) => {
    const problems = problemsAfter((content) => Object.assign(groupAt(content, path), { stray: 1, toString: 2 }));

    const below = path === '' ? '' : `${path}.`;
    expect(problems).toEqual([
      { kind: 'unknown key', path: `${below}stray` },
      { kind: 'unknown key', path: `${below}toString` },
    ]);
  });

  it.each(groups.flatMap((path) => ['__proto__', 'constructor', 'prototype'].map((key) => [key, path] as const)))(
    'is "%s" in "%s", which changes no object of the program',
    (key, path) => {
      const content = sample();
      Object.defineProperty(groupAt(content, path), key, {
        value: { polluted: 'yes', title: 'stolen' },
        enumerable: true,
      });
      const outcome = readCase(JSON.stringify(content));

      expect(problemsOf(outcome)).toEqual([{ kind: 'unknown key', path: path === '' ? key : `${path}.${key}` }]);
      expect('polluted' in {}).toBe(false);
      expect(({} as { title?: string }).title).toBeUndefined();
    },
  );

  it.each(['__proto__', 'constructor', 'prototype'])('is "%s" among the inputs too', (key) => {
    const text = sampleText.replace('\n  "inputs": {', `\n  "inputs": { "${key}": {"value":"1","unit":"t"},`);

    expect(problemsOf(readCase(text))).toEqual([{ kind: 'unknown key', path: `inputs.${key}` }]);
  });
});

describe('a list where a group is wanted, and the other way about', () => {
  it.each(['product', 'compare', 'inputs', 'materials.0', 'routes.1', 'routes.1.lines.0.stages.3'])(
    'is told once, for "%s"',
    (path) => {
      const problems = problemsAfter((content) => {
        const parts = path.split('.');
        const last = parts.pop() ?? '';
        const parent = parts.length === 0 ? content : at(content, parts.join('.'));
        parent[last] = [];
      });

      expect(problems).toContainEqual({
        kind: 'wrong form',
        path,
        given: 'a list',
        allowed: 'a group of named values in braces',
      });
      expect(problems.filter((problem) => problem.kind !== 'wrong form')).toEqual([]);
    },
  );

  it.each(['materials', 'routes', 'destinations', 'chemicals'])('is told for the list "%s"', (path) => {
    expect(problemsAfter((content) => (content[path] = { 0: 'x' }))).toEqual([
      { kind: 'wrong form', path, given: '{"0":"x"}', allowed: 'a list in square brackets' },
    ]);
  });
});

describe('limits of number', () => {
  it.each([
    ['materials', 'at least one material'],
    ['destinations', 'at least one destination'],
    ['routes', 'at least two routes'],
    ['routes.0.lines', 'at least one line'],
    ['routes.0.lines.0.stages', 'at least one stage'],
    ['routes.0.lines.0.recipe', 'at least one grade'],
  ])('ask of %s for %s', (path, allowed) => {
    const [, parent = '', last = ''] = /^(.*?)\.?([^.]+)$/.exec(path) ?? [];
    const emptied = (content: Loose) => ((parent === '' ? content : at(content, parent))[last] = []);

    expect(problemsAfter(emptied)).toContainEqual({
      kind: 'wrong form',
      path,
      given: '[]',
      allowed,
    });
  });

  it('are content with one material, one chemical and one destination', () => {
    const first = (content: Loose, path: string) => (content[path] = (content[path] as unknown[]).slice(0, 1));
    const problems = problemsAfter((content) => {
      for (const path of ['materials', 'chemicals']) first(content, path);
      // The one that the plan of the sample names.
      content['destinations'] = [at(content, 'destinations.1')];
      at(content, 'routes.1.lines.0')['recipe'] = [{ material: 'kraft' }];
    });

    expect(problems).toEqual([]);
  });

  it('cut off what is too long, and what is given in the sentence about it', () => {
    const [problem] = problemsAfter((content) => (content['title'] = '𝄞'.repeat(300)));

    expect(problem).toMatchObject({ kind: 'wrong form', path: 'title', allowed: 'at most 200 characters' });
    // 77 characters and three dots, and no half of the sign that stood at the cut.
    expect(problem).toHaveProperty('given', `"${'𝄞'.repeat(38)}...`);
  });

  it('count the entries of a list', () => {
    // The plan of the sample names an outlet, which stays among them.
    const ids = Array.from({ length: 61 }, (_, place) => (place === 0 ? 'incineration' : `d${String(place)}`));
    const many = ids.map((id) => ({ id, label: 'D', kind: 'sale' }));

    expect(problemsAfter((content) => (content['destinations'] = many))).toMatchObject([
      { kind: 'wrong form', path: 'destinations', allowed: 'at most 60 entries' },
    ]);
  });
});
