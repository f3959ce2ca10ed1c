import { describe, expect, test } from 'vitest';
import type { Stage } from '../../../src/case/case.ts';
import { components } from '../../../src/paper/components.ts';
import { type Evaluation, evaluated } from '../../support/evaluation.ts';
import { smallCase } from '../../support/small-case.ts';

// The third screen and the innocent disperser: invented figures, worked by hand. R = 0.20, Q = 0.90 for macro-stickies, 0 for
// micro-stickies; three feedback stages; the disperser turns 80 % of macro into micro-stickies and removes nothing.
const screen: Stage = { id: 'screen', like: 'fine', levels: 3 };
const disperser: Stage = { id: 'disperse', like: 'disperser' };

/** 100 parts of macro-stickies in 10,000 of paper, through the stages in the order given. */
function train(...stages: readonly Stage[]): Evaluation {
  const has = (id: string) => stages.some((stage) => stage.id === id);
  return evaluated(
    smallCase({
      stages,
      figures: {
        'material.paper.macroStickies': '1 %',
        ...(has('screen')
          ? {
              'mill.line.screen.rejectRate': '20 %',
              'mill.line.screen.quotient.macroStickies': '0.9 1',
              'mill.line.screen.quotient.microStickies': '0 1',
            }
          : {}),
        ...(has('disperse') ? { 'mill.line.disperse.turns.macroStickies-microStickies': '80 %' } : {}),
      },
    }),
  );
}

/** Parts that go on from a stage, of 100 that were in the paper. */
function partsAfter(line: Evaluation, stage: string): { macro: number; micro: number } {
  const parts = (component: string) => 1e4 * line.sumOfPresent([`mill.line.${stage}.accepts.${component}`]);
  return { macro: parts('macroStickies'), micro: parts('microStickies') };
}

test('three screens let 38.42 of 100 macro-stickies through', () => {
  expect(partsAfter(train(screen), 'screen').macro.toFixed(2)).toBe('38.42');
});

describe('a disperser after three screens', () => {
  test('leaves 7.68 macro and 30.74 micro, 38.42 as before', () => {
    // 38.42 x 0.2 = 7.68; 38.42 x 0.8 = 30.74.
    const { macro, micro } = partsAfter(train(screen, disperser), 'disperse');

    expect([macro.toFixed(2), micro.toFixed(2), (macro + micro).toFixed(2)]).toEqual(['7.68', '30.74', '38.42']);
  });
});

describe('a disperser before the three screens', () => {
  test('leaves 7.68 macro and 79.06 micro, 86.74 in the product', () => {
    // 20 macro x 0.3842 = 7.68; 80 micro follow the fibre, of which 1.1765 % is lost: 79.06.
    const { macro, micro } = partsAfter(train(disperser, screen), 'screen');

    expect([macro.toFixed(2), micro.toFixed(2), (macro + micro).toFixed(2)]).toEqual(['7.68', '79.06', '86.74']);
  });
});

// Trade practice, no source: a disperser kneads and spreads specks and stickies; it has no reject.
describe('a disperser', () => {
  const ofAll = Object.fromEntries(
    components.filter((each) => each !== 'fibre').map((each) => [`material.paper.${each}`, '1 %']),
  );
  const line = evaluated(smallCase({ stages: [disperser], figures: ofAll }));
  const after = (component: string) => line.sumOfPresent([`mill.line.disperse.accepts.${component}`]);

  test('removes no mass', () => {
    expect(line.model.graph.positions.has('mill.line.disperse.rejects.inkLarge')).toBe(false);
    expect(components.reduce((sum, component) => sum + after(component), 0)).toBeCloseTo(1, 15);
  });

  test('moves ink and stickies to smaller classes only', () => {
    expect(after('inkLarge')).toBeLessThan(0.01);
    expect(after('inkSmall')).toBeGreaterThan(0.01);
    expect(after('macroStickies')).toBeLessThan(0.01);
    expect(after('microStickies')).toBeGreaterThan(0.01);
    expect(after('inkLarge') + after('inkMid') + after('inkSmall')).toBeCloseTo(0.03, 15);
    expect(after('macroStickies') + after('microStickies')).toBeCloseTo(0.02, 15);
  });

  test('leaves ash, film, metal and dissolved matter as they were', () => {
    for (const component of ['ash', 'lights', 'heavies', 'wire', 'wetStrength', 'dissolved'])
      expect(after(component)).toBeCloseTo(0.01, 15);
  });
});
