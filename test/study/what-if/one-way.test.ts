import { describe, expect, it } from 'vitest';
import { constant } from '../../../src/kernel/expression/quantity.ts';
import { sensitivity } from '../../../src/study/sensitivity.ts';
import { openGraph } from '../../support/open-graph.ts';

/** A result with its turn at 5: (x - 5)^2. */
const bent = (figure: string, range: readonly [string, string]) =>
  openGraph((sheet) => {
    const apart = sheet.input('x', figure, '1', range).minus(constant('5'));
    sheet.define('y', apart.times(apart));
  });

describe('an input whose two ends move the result the same way', () => {
  it('is marked where today lies between them', () => {
    expect(sensitivity(bent('5', ['3', '7']), 'y').judged[0]?.sameWay).toBe(true);
  });

  it('is not where today lies beyond both, and both only lead back', () => {
    expect(sensitivity(bent('9', ['6', '8']), 'y').judged[0]?.sameWay).toBe(false);
  });

  it('is not where the two ends go apart', () => {
    expect(sensitivity(bent('8', ['6', '9']), 'y').judged[0]?.sameWay).toBe(false);
  });
});

describe('an input that is moved by a share of its figure', () => {
  it('is told apart where nobody knows how far it can go', () => {
    const open = openGraph((sheet) => {
      const known = sheet.input('known', '10', '1', ['5', '20']);
      sheet.define('y', known.times(sheet.input('unknown', '3')));
    });
    const { judged } = sensitivity(open, 'y', 'share either way', 0.1);

    expect(judged.map(({ id, isKnown }) => [id, isKnown])).toEqual([
      ['known', true],
      ['unknown', false],
    ]);
  });
});
