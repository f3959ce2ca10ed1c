import { describe, expect, test } from 'vitest';
import { stageEntries } from '../../../src/paper/catalogue.ts';
import { type Component, components } from '../../../src/paper/components.ts';
import { evaluated } from '../../support/evaluation.ts';
import { smallCase } from '../../support/small-case.ts';

/** One per cent of everything but fibre goes through one stage as the list has it: what share of each is taken out. */
function takenOutBy(like: string): (component: Component) => number {
  const figures = Object.fromEntries(
    components.filter((each) => each !== 'fibre').map((each) => [`material.paper.${each}`, '1 %']),
  );
  const mill = evaluated(smallCase({ stages: [{ id: 'stage', like }], figures }));
  return (component) =>
    mill.sumOfPresent([`mill.line.stage.rejects.${component}`]) / (component === 'fibre' ? 0.88 : 0.01);
}

const largerThanFibre: readonly Component[] = ['lights', 'wetStrength', 'macroStickies'];
const smallerThanFibre: readonly Component[] = ['fines', 'ash', 'inkSmall'];
const ofKind = (kind: string) =>
  [...stageEntries].filter(([, entry]) => entry.kind === kind).map(([like]) => ({ like }));

// Common practice, no source: the openings of a screen let a fibre through and hold back what is larger.
describe.each([...ofKind('coarse screen'), ...ofKind('fine screen').filter(({ like }) => like !== 'clean-virgin')])(
  'the screen $like',
  ({ like }) => {
    const taken = takenOutBy(like);

    test('holds back what is larger than a fibre rather than the fibre', () => {
      for (const component of largerThanFibre) expect(taken(component), component).toBeGreaterThan(2 * taken('fibre'));
    });

    test('lets what is smaller through at least as well as the fibre', () => {
      for (const component of smallerThanFibre)
        expect(taken(component), component).toBeLessThanOrEqual(taken('fibre') * (1 + 1e-12));
    });

    test('takes less than 3 % of the fibre', () => {
      expect(taken('fibre')).toBeLessThan(0.03);
    });
  },
);

// Common practice, no source: a washer turns it round: the fibre stays and what is smaller goes with the water.
describe.each(ofKind('washer'))('the washer $like', ({ like }) => {
  const taken = takenOutBy(like);

  test('holds back the fibre rather than what is smaller', () => {
    for (const component of smallerThanFibre) expect(taken(component), component).toBeGreaterThan(5 * taken('fibre'));
  });

  test('takes out none of what is larger than the fibre', () => {
    for (const component of [...largerThanFibre, 'heavies', 'wire'] as const)
      expect(taken(component), component).toBeLessThanOrEqual(taken('fibre'));
  });
});

// Common practice, no source: a forward cleaner throws outwards what is denser than fibre and water.
describe.each(ofKind('forward cleaner'))('the forward cleaner $like', ({ like }) => {
  const taken = takenOutBy(like);

  test('takes what is denser: sand, glass, metal', () => {
    for (const component of ['heavies', 'wire'] as const) expect(taken(component), component).toBeGreaterThan(0.5);
  });

  test('takes no more of what is lighter than of the fibre', () => {
    expect(taken('lights')).toBeLessThanOrEqual(taken('fibre') * (1 + 1e-12));
  });
});

// Common practice, no source: in a lightweight cleaner what is lighter gathers in the core and leaves there.
describe.each(ofKind('lightweight cleaner'))('the lightweight cleaner $like', ({ like }) => {
  const taken = takenOutBy(like);

  test('takes what is lighter: film and foam, and some of the stickies', () => {
    expect(taken('lights')).toBeGreaterThan(0.5);
    expect(taken('macroStickies')).toBeGreaterThan(10 * taken('fibre'));
  });

  test('takes nothing of what is denser', () => {
    for (const component of ['heavies', 'wire', 'ash'] as const) expect(taken(component), component).toBe(0);
  });
});

// Common practice, no source: a high-density cleaner guards what follows from sand, glass and metal.
test('the high-density cleaner takes sand and metal, and hardly a fibre', () => {
  const taken = takenOutBy('hdc');

  expect(taken('heavies')).toBeGreaterThan(0.8);
  expect(taken('fibre')).toBeLessThan(0.002);
  expect(taken('lights')).toBe(0);
});
