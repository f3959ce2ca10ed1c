import { describe, expect, test } from 'vitest';
import type { Case } from '../../../src/case/case.ts';
import { writeCase } from '../../../src/case/write-case.ts';
import { limitReadings } from '../../../src/study/limits/limit-readings.ts';
import { openCase } from '../../../src/study/open-case.ts';
import { evaluated } from '../../support/evaluation.ts';
import { smallCase } from '../../support/small-case.ts';

/** One line that passes everything on: 1 bdt of stock from paper of which a share dissolves. */
function mill(dissolved: string, effluent: string): Case {
  return smallCase({
    stages: [{ id: 'slush', like: 'pumps' }],
    figures: { 'material.paper.dissolved': dissolved, 'mill.effluent': effluent },
  });
}

// Worked by hand: the yield counts stock without dissolved matter, so 1 bdt of stock with 4 % dissolved in what is fed takes 1/0.96 bdt and
// brings 0.04/0.96 x 1000 = 41.667 kg of dissolved matter.
describe('dissolved matter in the water loop', () => {
  test('of 41.667 kg and 8 m3 a tonne is 5208.3 mg/l', () => {
    const worked = evaluated(mill('4 %', '8 m3/t'));

    expect(worked.number('mill.water.dissolvedLoad')).toBeCloseTo(41.6667, 4);
    expect(worked.number('mill.water.concentration')).toBeCloseTo(5208.33, 2);
  });

  test('doubles where effluent is halved', () => {
    expect(evaluated(mill('4 %', '4 m3/t')).number('mill.water.concentration')).toBeCloseTo(10_416.67, 2);
  });

  test('is nothing where nothing dissolves', () => {
    expect(evaluated(mill('0 %', '8 m3/t')).number('mill.water.concentration')).toBe(0);
  });

  test('is worked out without effluent too, as if 10 litres a tonne left: 4 166 667 mg/l, which no limit is kept by', () => {
    expect(evaluated(mill('4 %', '0 m3/t')).number('mill.water.concentration')).toBeCloseTo(4_166_666.7, 1);
  });

  test('can be limited in mg/l', () => {
    const limit = { id: 'loop', label: 'Loop', result: 'water.concentration', route: 'mill', kind: 'soft' } as const;
    const limits = [{ ...limit, sense: 'at most', value: '5000', unit: 'mg/l' }] as const;
    const open = openCase(writeCase({ ...mill('4 %', '8 m3/t'), limits }));

    expect(open.ok && limitReadings(open.value)).toMatchObject([{ kept: false, per: 'tonne', unit: 'mg/l' }]);
    expect(open.ok && limitReadings(open.value)[0]?.value).toBeCloseTo(5208.33, 2);
  });
});
