import { describe, expect, it } from 'vitest';
import { at, problemsAfter } from './sample-case.ts';

describe('names that are said twice', () => {
  it.each([
    'materials',
    'chemicals',
    'destinations',
    'routes',
    'routes.1.lines',
    'routes.1.additives',
    'routes.1.charges',
  ])('are told for "%s"', (path) => {
    const given: string[] = [];
    const problems = problemsAfter((content) => {
      const list = at(content, path) as unknown as { id: string }[];
      const [first] = list;
      given.push(first?.id ?? '');
      list.push({ ...(first ?? { id: '' }) });
    });

    expect(problems).toEqual([{ kind: 'said twice', path, given: given[0] }]);
  });

  it('are told for residues whose tax is not the standard one', () => {
    const problems = problemsAfter((content) => {
      content['residues'] = ['ash', 'junk', 'ash'].map((stream) => ({ stream, landfillTax: 'lower' }));
    });

    expect(problems).toEqual([{ kind: 'said twice', path: 'residues', given: 'ash' }]);
  });

  it('are told for stages, grades and chemicals of the machine', () => {
    const problems = problemsAfter((content) => {
      at(content, 'routes.1.lines.0.stages.2')['id'] = 'pulper';
      at(content, 'routes.1.lines.0.recipe.1')['material'] = 'yard';
      at(content, 'routes.1')['machineChemicals'] = ['defoamer', 'retention', 'defoamer', 'defoamer'];
    });

    expect(problems).toEqual([
      { kind: 'said twice', path: 'routes.1.machineChemicals', given: 'defoamer' },
      { kind: 'said twice', path: 'routes.1.machineChemicals', given: 'defoamer' },
      { kind: 'said twice', path: 'routes.1.lines.0.stages', given: 'pulper' },
      { kind: 'said twice', path: 'routes.1.lines.0.recipe', given: 'yard' },
    ]);
  });

  it('of additives stand for one kind of thing in all routes', () => {
    const problems = problemsAfter((content) => {
      const [first] = at(content, 'routes.1')['additives'] as { kind: string }[];
      at(content, 'routes.0')['additives'] = [{ ...first, kind: first?.kind === 'mineral' ? 'organic' : 'mineral' }];
    });

    expect(problems).toMatchObject([{ kind: 'wrong form', path: 'routes.1.additives.0.kind' }]);
  });

  it('are no single stages that a cascade does not have', () => {
    const problems = problemsAfter((content) => {
      const stages = at(content, 'routes.1.lines.0.stages') as unknown as Record<string, unknown>[];
      stages.push({ id: 'two', like: 'slots', levels: 3, forward: [2, 5] });
      stages.push({ id: 'one', like: 'slots', levels: 1, forward: [2] });
    });

    expect(problems).toMatchObject([
      { kind: 'wrong form', given: '5', allowed: 'a single stage from 2 to 3' },
      { kind: 'wrong form', given: '2', allowed: 'none, for there is one single stage' },
    ]);
  });

  it('may be the same in two lines, two routes and two lists', () => {
    expect(
      problemsAfter((content) => {
        at(content, 'routes.0.lines.0.stages.0')['id'] = 'pulper';
        at(content, 'chemicals.0')['id'] = 'kraft';
        at(content, 'routes.1')['machineChemicals'] = ['retention'];
      }),
    ).toEqual([]);
  });
});

describe('names that point at nothing', () => {
  it('are told with what there is', () => {
    const problems = problemsAfter((content) => {
      at(content, 'compare')['base'] = 'bale';
      at(content, 'routes.1')['balance'] = 'white';
      at(content, 'routes.1.lines.0.recipe.1')['material'] = 'straw';
    });

    expect(problems).toEqual([
      { kind: 'unknown reference', path: 'compare.base', given: 'bale', what: 'route', known: ['bales', 'yard'] },
      { kind: 'unknown reference', path: 'routes.1.balance', given: 'white', what: 'line', known: ['brown'] },
      {
        kind: 'unknown reference',
        path: 'routes.1.lines.0.recipe.1.material',
        given: 'straw',
        what: 'material',
        known: ['kraft', 'yard', 'clippings'],
      },
    ]);
  });

  it('are not judged while the list they point into cannot be read', () => {
    const problems = problemsAfter((content) => {
      at(content, 'materials.0')['id'] = 7;
      at(content, 'routes.1.lines.0.recipe.1')['material'] = 'straw';
    });

    expect(problems.map((problem) => problem.kind)).toEqual(['wrong form']);
  });
});
