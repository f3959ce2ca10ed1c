import { describe, expect, it } from 'vitest';
import type { Stage } from '../../src/case/case.ts';
import { type OpenCase, caseText } from '../../src/index.ts';
import { after, coarse, figuresUnder, line, mixed, open, withFigure } from './edited.ts';

const stageIds = (from: OpenCase): readonly string[] => line(from, 'recovered', 'mixed').stages.map(({ id }) => id);

describe('stages', () => {
  it('are added where they are wanted, with a name of their own', () => {
    const once = after({ kind: 'add stage', ...mixed, like: 'disperser', at: 2 });
    const twice = after({ kind: 'add stage', ...mixed, like: 'disperser', at: 0 }, once);

    expect(stageIds(once)[2]).toBe('disperser');
    expect(stageIds(twice)[0]).toBe('disperser-2');
    expect(stageIds(twice)).toHaveLength(stageIds(open).length + 2);
  });

  it('beyond either end are added at that end', () => {
    expect(stageIds(after({ kind: 'add stage', ...mixed, like: 'press', at: 99 })).at(-1)).toBe('press');
    expect(stageIds(after({ kind: 'add stage', ...mixed, like: 'press', at: -3 }))[0]).toBe('press');
  });

  it('take their figures with them when they go', () => {
    expect(figuresUnder(withFigure, 'recovered.mixed.coarse')).toEqual(['recovered.mixed.coarse.rejectRate']);

    const left = after({ kind: 'remove stage', ...coarse }, withFigure);

    expect(stageIds(left)).not.toContain('coarse');
    expect(figuresUnder(left, 'recovered.mixed.coarse')).toEqual([]);
    expect(Object.keys(left.content.inputs)).toHaveLength(Object.keys(withFigure.content.inputs).length - 1);
  });

  it('are copied with their figures, next to the original', () => {
    const copied = after({ kind: 'duplicate stage', ...coarse }, withFigure);
    const at = stageIds(copied).indexOf('coarse');

    expect(stageIds(copied)[at + 1]).toBe('coarse-2');
    expect(copied.content.inputs['recovered.mixed.coarse-2.rejectRate']).toEqual(
      copied.content.inputs['recovered.mixed.coarse.rejectRate'],
    );
  });

  it('keep their figures when they are moved', () => {
    const moved = after({ kind: 'move stage', ...coarse, to: 0 }, withFigure);

    expect(stageIds(moved)[0]).toBe('coarse');
    expect([...stageIds(moved)].sort()).toEqual([...stageIds(withFigure)].sort());
    expect(moved.content.inputs).toEqual(withFigure.content.inputs);
  });

  it('lose only the figures that they no longer ask for when they work otherwise', () => {
    const drum = after({ kind: 'set up stage', ...coarse, options: { like: 'drum' } }, withFigure);
    const longer = after({ kind: 'set up stage', ...coarse, options: { levels: 5, forward: [3] } }, withFigure);

    expect(figuresUnder(drum, 'recovered.mixed.coarse')).toEqual([]);
    expect(figuresUnder(longer, 'recovered.mixed.coarse')).toEqual(['recovered.mixed.coarse.rejectRate']);
  });

  it('go back to what they usually do where an option is given up', () => {
    const set = after({ kind: 'set up stage', ...coarse, options: { levels: 5, label: 'Long cascade' } });
    const back = after({ kind: 'set up stage', ...coarse, options: { levels: null, label: null } }, set);
    const stageOf = (from: OpenCase): Stage | undefined =>
      line(from, 'recovered', 'mixed').stages.find(({ id }) => id === 'coarse');

    expect(stageOf(set)).toMatchObject({ levels: 5, label: 'Long cascade' });
    expect(caseText(back)).toBe(caseText(open));
  });

  it('never all go: the last one stays', () => {
    const bare = stageIds(open).reduce((from, stage) => after({ kind: 'remove stage', ...mixed, stage }, from), open);

    expect(stageIds(bare)).toEqual([stageIds(open).at(-1)]);
  });
});
