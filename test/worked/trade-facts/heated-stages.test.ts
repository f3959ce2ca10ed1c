import { expect, test } from 'vitest';
import { stageChoices } from '../../../src/index.ts';
import { evaluated } from '../../support/evaluation.ts';
import { smallCase } from '../../support/small-case.ts';

const computed = stageChoices().map(({ like }) => ({ like }));
const stageWith = (like: string, figures: Readonly<Record<string, string>> = {}) =>
  evaluated(smallCase({ stages: [{ id: 'stage', like, heat: 'computed' }], figures }));

// Common practice, no source: a loop is as warm as its stages, and only what is heated above it takes steam.
test.each(computed)('$like can be told to work its heat out, and takes no less than nothing', ({ like }) => {
  expect(stageWith(like).number('mill.heat.stock')).toBeGreaterThanOrEqual(0);
});

test('a screen takes no heat of its own until somebody says what it is heated from', () => {
  expect(stageWith('coarse').number('mill.heat.stock')).toBe(0);
  expect(stageWith('coarse', { 'mill.line.stage.heatFrom': '40 C' }).number('mill.heat.stock')).toBeGreaterThan(0.4);
});
