import { describe, expect, it } from 'vitest';
import { type OpenCase, caseText } from '../../src/index.ts';
import { checksOf } from '../../src/study/checks.ts';
import { after, figuresUnder, line, mixed, open, route, withFigure } from './edited.ts';

describe('lines', () => {
  it('are added with the usual train of their material, and no share yet', () => {
    const added = after({ kind: 'add line', route: 'recovered', material: 'graphic' });

    expect(line(added, 'recovered', 'graphic').stages.length).toBeGreaterThan(5);
    expect(added.content.inputs['recovered.graphic.share']).toEqual({ value: '0', unit: '%' });
    expect(added.values.number('recovered.cost.total')).toBeCloseTo(open.values.number('recovered.cost.total'), 9);
    expect(added.content.materials.map(({ id }) => id)).toContain('graphic');
  });

  it('take their figures and their share with them, which the balancing line makes up for', () => {
    const gone = after({ kind: 'remove line', ...mixed });
    const { balance } = route(open, 'recovered');
    const share = (from: OpenCase, id: string) => from.values.number(`recovered.${id}.share`);

    expect(figuresUnder(gone, 'recovered.mixed')).toEqual([]);
    expect(share(gone, balance)).toBeCloseTo(share(open, balance) + share(open, 'mixed'), 12);
  });

  it('hand the balance on when the balancing line goes, and the route still works out', () => {
    const { balance, lines } = route(open, 'recovered');
    const gone = after({ kind: 'remove line', route: 'recovered', line: balance });
    const heir = lines.find(({ id }) => id !== balance)!.id;

    expect(route(gone, 'recovered').balance).toBe(heir);
    expect(gone.content.inputs[`recovered.${heir}.share`]).toBeUndefined();
    expect(gone.gaps).toEqual([]);
    expect(checksOf(gone).every(({ kept }) => kept)).toBe(true);
    expect(gone.values.number('recovered.cost.total')).toBeGreaterThan(0);
  });

  it('change nothing when another one takes the balance: shares and costs stay', () => {
    const handed = after({ kind: 'balance by line', ...mixed });

    expect(route(handed, 'recovered').balance).toBe('mixed');
    for (const { id } of route(open, 'recovered').lines)
      expect(handed.values.number(`recovered.${id}.share`)).toBeCloseTo(open.values.number(`recovered.${id}.share`), 9);
    expect(handed.values.number('recovered.cost.total')).toBeCloseTo(open.values.number('recovered.cost.total'), 6);
  });

  it('are copied with their figures but for the share', () => {
    const copied = after({ kind: 'duplicate line', ...mixed }, withFigure);

    expect(copied.content.inputs['recovered.mixed-2.coarse.rejectRate']).toEqual({ value: '18', unit: '%' });
    expect(copied.content.inputs['recovered.mixed-2.share']).toEqual({ value: '0', unit: '%' });
    expect(copied.values.exact('recovered.mixed-2.yield')).toBe(copied.values.exact('recovered.mixed.yield'));
  });

  it('never all go: the last one stays', () => {
    const ids = route(open, 'recovered').lines.map(({ id }) => id);
    const bare = ids.reduce((from, id) => after({ kind: 'remove line', route: 'recovered', line: id }, from), open);

    expect(route(bare, 'recovered').lines).toHaveLength(1);
  });

  it('can be put in another order, which changes no figure', () => {
    const moved = after({ kind: 'move line', ...mixed, to: 0 });

    expect(route(moved, 'recovered').lines[0]?.id).toBe('mixed');
    expect(moved.values.number('recovered.cost.total')).toBeCloseTo(open.values.number('recovered.cost.total'), 9);
  });
});

describe('grades', () => {
  it('join a recipe with nothing yet and leave it with their share', () => {
    const joined = after({ kind: 'add grade', ...mixed, material: 'supermarket' });

    expect(joined.content.inputs['recovered.mixed.grade.supermarket.share']).toEqual({ value: '0', unit: '%' });
    expect(joined.values.number('recovered.cost.total')).toBeCloseTo(open.values.number('recovered.cost.total'), 9);
    expect(caseText(after({ kind: 'remove grade', ...mixed, material: 'supermarket' }, joined))).toBe(caseText(open));
  });

  it('never all go, and the first takes what the others leave, whoever is first', () => {
    const joined = after({ kind: 'add grade', ...mixed, material: 'supermarket' });
    const [first] = line(open, 'recovered', 'mixed').recipe;
    const left = after({ kind: 'remove grade', ...mixed, material: first!.material }, joined);
    const none = after({ kind: 'remove grade', ...mixed, material: 'supermarket' }, left);

    expect(line(left, 'recovered', 'mixed').recipe).toEqual([{ material: 'supermarket' }]);
    expect(figuresUnder(left, 'recovered.mixed.grade')).toEqual([]);
    expect(line(none, 'recovered', 'mixed').recipe).toEqual([{ material: 'supermarket' }]);
  });

  it('that are in a recipe already are not added again', () => {
    const [first] = line(open, 'recovered', 'mixed').recipe;

    expect(caseText(after({ kind: 'add grade', ...mixed, material: first!.material }))).toBe(caseText(open));
  });
});
