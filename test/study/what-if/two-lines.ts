import type { Limit, OpenCase } from '../../../src/index.ts';
import { openCase } from '../../../src/index.ts';
import { writeCase } from '../../../src/case/write-case.ts';
import { valueOf } from '../../examples/demonstration.ts';
import { smallCase } from '../../support/small-case.ts';

const pulp = { id: 'pulp', label: 'Pulp', origin: 'virgin' } as const;

/**
 * Route "mill" of one virgin and one recovered line that only pump, on a machine that keeps everything and adds nothing. The tonne of dry
 * product is then so much of the one and so much of the other stock: a recovered share s of paper with ash a, beside pulp with ash b,
 * gives a product with ash b + (a - b) s.
 */
export function twoLines(limits: readonly Limit[], figures: Readonly<Record<string, string>> = {}): OpenCase {
  const content = smallCase({
    stages: [],
    materials: [{}, pulp],
    route: {
      lines: [
        { id: 'virgin', label: 'Virgin', recipe: [{ material: 'pulp' }], stages: [{ id: 'pump', like: 'pumps' }] },
        { id: 'paper', label: 'Paper', recipe: [{ material: 'paper' }], stages: [{ id: 'pump', like: 'pumps' }] },
      ],
      balance: 'virgin',
    },
    figures: {
      'other.line.grade.pulp.share': '50 %',
      'mill.paper.share': '40 %',
      'material.paper.ash': '20 %',
      'material.pulp.ash': '1 %',
      ...figures,
    },
  });
  return valueOf(openCase(writeCase({ ...content, limits })));
}

/** A limit on the ash of the product, in per cent, in route "mill". */
export function ashLimit(value: string, more: Partial<Limit> = {}): Limit {
  return {
    id: 'ash',
    label: 'Ash',
    result: 'productAsh',
    route: 'mill',
    sense: 'at most',
    value,
    unit: '%',
    kind: 'hard',
    ...more,
  };
}
