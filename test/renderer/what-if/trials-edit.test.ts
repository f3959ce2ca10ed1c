import { beforeEach, describe, expect, it } from 'vitest';
import { Entry } from '../../../renderer/fields/entry.svelte.ts';
import { DrawnEditor } from '../../../renderer/screens/what-if/trials/drawn-editor.svelte.ts';
import { EditedUncertainty } from '../../../renderer/screens/what-if/trials/edited-uncertainty.ts';
import { figureView } from '../../../renderer/screens/what-if/trials/figure-view.ts';
import { knownReach } from '../../../renderer/screens/what-if/trials/known-reach.ts';
import { withLaw } from '../../../renderer/screens/what-if/trials/law-figures.ts';
import { nextSeed } from '../../../renderer/screens/what-if/trials/next-seed.ts';
import { plainFigure, plainText } from '../../../renderer/screens/what-if/trials/plain-figure.ts';
import { startFromDrawn } from '../../../renderer/screens/what-if/trials/start-from-drawn.ts';
import { Book } from '../../../renderer/session/book.svelte.ts';
import { CaseSession } from '../../../renderer/session/case-session.svelte.ts';
import { distributionLaws } from '../../../src/index.ts';
import { FakeHost } from '../fake-host.ts';
import { demonstration, EngineInThread } from '../open-demonstration.ts';
import { demonstrationTrials, withoutUncertainty } from './trials-summary.ts';

const [pulp, hardwood, mixed] = ['material.bctmp.price', 'material.bhkp.price', 'material.mixed.price'];

const blank = { id: 'a', label: 'most likely', unit: 'EUR/adt', given: undefined, standIn: '545', source: 'today' };

/** A book for slots, and a place that notes down what is put there. */
function slotOf(refusal: readonly string[] = []) {
  const taken: string[] = [];
  const put = (typed: string) => {
    taken.push(typed);
    return Promise.resolve(refusal);
  };
  return { book: new Book(new FakeHost().asHost(), new EngineInThread(), demonstration), put, taken };
}

let session: CaseSession;
let editor: DrawnEditor;
const given = (id: string) => EditedUncertainty.of(session.text)?.content.inputs[id];

beforeEach(async () => {
  session = new CaseSession(new EngineInThread());
  await session.open(demonstration);
  editor = new DrawnEditor(session);
});

describe('what a case says of its uncertainty', () => {
  it('is read from its text, and is nothing where nobody has said anything', () => {
    expect(EditedUncertainty.of(demonstration)?.content.trials).toBe(10_000);
    expect(EditedUncertainty.of(withoutUncertainty())).toBeNull();
    expect(EditedUncertainty.of('')).toBeNull();
  });

  it('loses the correlations of an input with the input', () => {
    const before = EditedUncertainty.of(demonstration);
    const after = before?.withoutInput(pulp);

    expect(after?.inputs.map(([id]) => id)).not.toContain(pulp);
    expect(before?.correlations.some(({ one, other }) => one === pulp || other === pulp)).toBe(true);
    expect(after?.correlations.some(({ one, other }) => one === pulp || other === pulp)).toBe(false);
    expect(after?.isCorrelated(hardwood, mixed)).toBe(true);
  });

  it('knows a pair in either order, and holds it once', () => {
    const before = EditedUncertainty.of(demonstration);
    const after = before?.withCorrelation(hardwood, pulp, '0.5');

    expect(after?.correlations).toHaveLength(before?.correlations.length ?? 0);
    expect(after?.correlations.find(({ one, other }) => one === pulp && other === hardwood)?.value).toBe('0.5');
    expect(after?.withoutCorrelation(hardwood, pulp).isCorrelated(pulp, hardwood)).toBe(false);
  });

  it('leaves the list of correlations out once it is empty', () => {
    const alone = new EditedUncertainty({ trials: 1000, seed: 1, years: 1, inputs: {} }).withCorrelation('a', 'b', '0');

    expect('correlations' in alone.withoutCorrelation('a', 'b').content).toBe(false);
  });
});

describe('an edit of it', () => {
  it('is one step that undo takes back', async () => {
    const before = session.text;

    expect(await editor.setFigure(pulp, 'Pulp price', 'low', '300')).toEqual([]);

    expect(given(pulp)?.low).toBe('300');
    expect(session.history.undoes).toBe('Spread of pulp price');
    await session.undo();
    expect(session.text).toBe(before);
  });

  it('that is refused says why and leaves the case as it is', async () => {
    const before = session.text;

    const sentences = await editor.setFigure(pulp, 'Pulp price', 'low', '900');

    expect(sentences).toEqual(['900 to 700 was given; allowed is a low end below the high end.']);
    expect(session.text).toBe(before);
    await editor.choose((now) => now.with({ trials: 10 }), 'Number of trials');
    expect(editor.refusal).toEqual(['10 was given; allowed is a whole number from 1000 to 1000000.']);
    expect(session.text).toBe(before);
  });

  it('starts from what the one before has left, however fast they come', async () => {
    const figure = editor.setFigure(pulp, 'Pulp price', 'low', '300');
    const seed = editor.choose((now) => now.with({ seed: now.content.seed + 1 }), 'Seed of the trials');
    await Promise.all([figure, seed]);

    expect(given(pulp)?.low).toBe('300');
    expect(EditedUncertainty.of(session.text)?.content.seed).toBe(20_262);
  });

  it('names a figure that is missing', async () => {
    await editor.setInput(pulp, 'Pulp price', { law: 'uniform', high: '600' });

    expect(editor.refusal).toEqual(['The figure “low” is missing.']);
  });

  it('changes, adds and removes the values of a discrete input', async () => {
    const values = ['500', '600'].map((value) => ({ value, weight: '1' }));
    await editor.setInput(pulp, 'Pulp price', { law: 'discrete', values });

    await editor.setValue(pulp, 'Pulp price', 1, { weight: '3' });
    await editor.addValue(pulp, 'Pulp price', '700');
    await editor.removeValue(pulp, 'Pulp price', 0);

    expect(given(pulp)?.values).toEqual([
      { value: '600', weight: '3' },
      { value: '700', weight: '1' },
    ]);
    await editor.removeInput(pulp, 'Pulp price');
    expect(given(pulp)).toBeUndefined();
  });

  it('goes on after one that was refused', async () => {
    await editor.setFigure(pulp, 'Pulp price', 'low', '900');
    await editor.setFigure(pulp, 'Pulp price', 'low', '310');

    expect(given(pulp)?.low).toBe('310');
  });

  it('that leaves a most likely figure out makes it the one in force', async () => {
    await editor.setFigure(pulp, 'Pulp price', 'mode', '500');
    expect(given(pulp)?.mode).toBe('500');

    await editor.setFigure(pulp, 'Pulp price', 'mode', '');
    expect(given(pulp)).not.toHaveProperty('mode');
  });

  it('takes everything out of the case, and undo brings it back', async () => {
    const before = session.text;

    await editor.write(null);
    expect(editor.now).toBeNull();

    await session.undo();
    expect(session.text).toBe(before);
  });
});

describe('another law for an input', () => {
  const known = { figure: '545', low: '360', high: '700', deviation: '64' };

  it.each(distributionLaws)('%s is one the engine takes, from whatever law it was before', async (law) => {
    for (const before of distributionLaws) {
      const from = withLaw({ law: 'triangular', low: '400', high: '600' }, before, known);
      await editor.setInput(pulp, 'Pulp price', withLaw(from, law, known));

      expect(editor.refusal).toEqual([]);
      expect(given(pulp)?.law).toBe(law);
    }
  });

  it('keeps the figures both laws share, and when it is drawn', () => {
    const from = { law: 'PERT', low: '400', mode: '500', high: '600', drawn: 'once', persistence: '0.5' } as const;

    expect(withLaw(from, 'triangular', known)).toEqual({ ...from, law: 'triangular' });
    expect(withLaw(from, 'uniform', known)).toEqual({
      law: 'uniform',
      low: '400',
      high: '600',
      drawn: 'once',
      persistence: '0.5',
    });
    expect(withLaw(from, 'normal', known)).toMatchObject({ deviation: '64', low: '400', high: '600' });
  });

  it('spans the values of a discrete one', () => {
    const values = ['500', '90', '100'].map((value) => ({ value, weight: '1' }));

    expect(withLaw({ law: 'discrete', values }, 'uniform', known)).toEqual({ law: 'uniform', low: '90', high: '500' });
  });
});

describe('how far an input is known to go', () => {
  const input = { ...figureView({ ...blank, given: '50' }), low: '40', high: '70' };

  it('is the range it is moved over, and the deviation it was drawn with', () => {
    expect(knownReach(input, { low: 45, high: 65 }, { deviation: 5.4321 })).toEqual({
      figure: '50',
      low: '45',
      high: '65',
      deviation: '5.43',
    });
  });

  it('is the usual range where it is not moved, with a quarter of it for the deviation', () => {
    expect(knownReach(input, undefined, undefined)).toMatchObject({ low: '40', high: '70', deviation: '7.5' });
  });

  it('is a fifth either way where nothing is known', () => {
    const unknown = { ...input, low: null, high: null };

    expect(knownReach(unknown, undefined, { deviation: 0 })).toMatchObject({ low: '40', high: '60', deviation: '5' });
  });
});

describe('a slot for a figure of a law', () => {
  it('shows what stands in for a missing figure as a default, and a given one as written', () => {
    expect(figureView(blank)).toMatchObject({ value: '545', touched: false });
    expect(figureView({ ...blank, given: '500' })).toMatchObject({ value: '500', touched: true });
  });

  it('puts what is typed where it is told to, and nothing where it is emptied', async () => {
    const { book, put, taken } = slotOf();
    const entry = new Entry(book, () => figureView(blank), put, true);

    entry.type('500');
    expect(await entry.commit()).toBe(true);
    entry.type('  ');
    expect(await entry.commit()).toBe(true);

    expect(taken).toEqual(['500', '']);
  });

  it('asks for a figure where one is needed, and keeps what was refused', async () => {
    const { book, put, taken } = slotOf(['Too low.']);
    const entry = new Entry(book, () => figureView(blank), put);

    entry.type(' ');
    expect(await entry.commit()).toBe(false);
    expect(taken).toEqual([]);
    entry.type('-1');
    expect(await entry.commit()).toBe(false);
    expect(entry.doubt?.sentences).toEqual(['Too low.']);
    expect(entry.text).toBe('-1');
  });
});

describe('another seed', () => {
  it('is the next one, and the first after the last', () => {
    expect(nextSeed(20_261)).toBe(20_262);
    expect(nextSeed(4_294_967_295)).toBe(0);
  });
});

describe('starting from the usual ranges', () => {
  it('draws the very same trials, now as the case says', async () => {
    const usual = demonstrationTrials('difference.total', withoutUncertainty());
    await session.open(withoutUncertainty());

    await editor.write(startFromDrawn({ ...usual, trials: 10_000 }, 10));

    const said = demonstrationTrials('difference.total', session.text);
    expect(usual.isUsual).toBe(true);
    expect(said).toEqual({ ...usual, isUsual: false });
  });
});

describe('a figure of a law', () => {
  it('may name the unit of its input, as written or as shown', () => {
    expect(plainFigure('360', 'EUR/adt')).toEqual({ kind: 'figure', digits: '360' });
    expect(plainFigure('360 €/adt', 'EUR/adt')).toEqual({ kind: 'figure', digits: '360' });
    expect(plainFigure('12 %', '%')).toEqual({ kind: 'figure', digits: '12' });
  });

  it('is asked for in that unit where another stands there', () => {
    expect(plainFigure('360 EUR/bdt', 'EUR/adt')).toEqual({
      kind: 'refused',
      sentence: 'Give it in €/adt, not in “EUR/bdt”.',
    });
    expect(plainFigure('3 %', '1')).toEqual({ kind: 'refused', sentence: 'Give it as a plain number, not in “%”.' });
  });

  it('is written without the dust of binary fractions', () => {
    expect(plainText(0.1 * 0.8)).toBe('0.08');
  });
});
