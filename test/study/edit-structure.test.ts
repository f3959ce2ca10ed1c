import { describe, expect, it } from 'vitest';
import { type Edit, type OpenCase, caseText, editStructure, openCase, problemSentence } from '../../src/index.ts';
import { problemsOf, valueOf } from '../examples/demonstration.ts';
import { after, coarse, figuresUnder, mixed, open, route } from './edited.ts';

describe('routes', () => {
  it('are copied with every figure, and cost the same', () => {
    const copied = after({ kind: 'duplicate route', route: 'recovered' });

    expect(figuresUnder(copied, 'recovered-2')).toHaveLength(figuresUnder(open, 'recovered').length);
    expect(copied.values.exact('recovered-2.cost.total')).toBe(copied.values.exact('recovered.cost.total'));
    expect(copied.content.compare).toEqual(open.content.compare);
  });

  it('go with their figures, and what faced them faces another one', () => {
    const three = after({ kind: 'duplicate route', route: 'recovered' });
    const two = after({ kind: 'remove route', route: 'recovered' }, three);

    expect(two.content.routes.map(({ id }) => id)).toEqual(['virgin', 'recovered-2']);
    expect(figuresUnder(two, 'recovered')).toEqual([]);
    expect(two.content.compare).toEqual({ base: 'virgin', with: 'recovered-2' });
  });

  it('stay where only two are left: there would be nothing to compare', () => {
    for (const id of ['virgin', 'recovered'])
      expect(caseText(after({ kind: 'remove route', route: id }))).toBe(caseText(open));
  });

  it('are renamed, moved and set against one another', () => {
    const named = after({ kind: 'rename route', route: 'virgin', label: '  Bought pulp ' });
    const moved = after({ kind: 'move route', route: 'recovered', to: 0 }, named);
    const turned = after({ kind: 'compare routes', base: 'recovered', with: 'virgin' }, moved);

    expect(route(named, 'virgin').label).toBe('Bought pulp');
    expect(moved.content.routes[0]?.id).toBe('recovered');
    expect(turned.values.number('difference.total')).toBeCloseTo(-open.values.number('difference.total'), 9);
  });

  it('keep a label that is given up, and face no route twice', () => {
    expect(caseText(after({ kind: 'rename route', route: 'virgin', label: '   ' }))).toBe(caseText(open));
    expect(caseText(after({ kind: 'compare routes', base: 'virgin', with: 'virgin' }))).toBe(caseText(open));
  });

  it('can be copied from a label of full length, within that length', () => {
    const long = after({ kind: 'rename route', route: 'virgin', label: 'x'.repeat(300) });
    const copied = after({ kind: 'duplicate route', route: 'virgin' }, long);

    expect(route(long, 'virgin').label).toHaveLength(200);
    expect(route(copied, 'virgin-2').label).toBe(`${'x'.repeat(193)} (copy)`);
    expect(openCase(caseText(copied)).ok).toBe(true);
  });
});

describe('what cannot be', () => {
  it.each<{ what: string; edit: Edit; said: string }>([
    {
      what: 'an unknown stage of the list',
      edit: { kind: 'add stage', ...mixed, like: 'oven', at: 0 },
      said: '"oven"',
    },
    { what: 'nine single stages', edit: { kind: 'set up stage', ...coarse, options: { levels: 9 } }, said: '1 to 5' },
    { what: 'an unknown grid', edit: { kind: 'set basis', basis: { grid: 'MOON' } }, said: '"MOON"' },
    { what: 'an unknown fuel', edit: { kind: 'set basis', basis: { fuel: 'peat' } }, said: '"peat"' },
  ])('is refused in a sentence: $what', ({ edit, said }) => {
    const [problem] = problemsOf(editStructure(open, edit));

    expect(problemSentence(problem)).toContain(said);
  });

  it('is refused when there would be more routes than a file holds', () => {
    const copies = Array.from({ length: 18 }, (_, at) => ({ ...route(open, 'virgin'), id: `copy-${String(at)}` }));
    const many: OpenCase = { ...open, content: { ...open.content, routes: [...open.content.routes, ...copies] } };

    expect(many.content.routes).toHaveLength(20);
    const [problem, ...more] = problemsOf(editStructure(many, { kind: 'duplicate route', route: 'virgin' }));
    expect(more).toEqual([]);
    expect(problem).toMatchObject({ kind: 'wrong form', path: 'routes' });
  });
});

it('an edit is undone by the text from before it', () => {
  const before = caseText(open);
  const changed = after({ kind: 'remove line', ...mixed });

  expect(caseText(changed)).not.toBe(before);
  expect(caseText(valueOf(openCase(before)))).toBe(before);
  expect(valueOf(openCase(before)).values.exact('recovered.cost.total')).toBe(
    open.values.exact('recovered.cost.total'),
  );
});
