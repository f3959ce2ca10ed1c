import { describe, expect, test } from 'vitest';
import { type Evaluation, evaluated } from '../../support/evaluation.ts';
import { smallCase } from '../../support/small-case.ts';

interface Shares {
  readonly post: number;
  readonly pre: number;
  readonly virgin: number;
}

/** A recipe of post-consumer paper, pre-consumer cuttings and virgin pulp, in per cent of what is fed; nothing is lost. */
function mill(shares: Shares, figures: Record<string, string> = {}): Evaluation {
  return evaluated(
    smallCase({
      materials: [
        { id: 'paper', origin: 'post-consumer' },
        { id: 'cuttings', label: 'Cuttings', origin: 'pre-consumer' },
        { id: 'pulp', label: 'Pulp', origin: 'virgin' },
      ],
      stages: [{ id: 'slush', like: 'pumps' }],
      figures: {
        'material.cuttings.price': '300 EUR/t-ar',
        'material.pulp.price': '500 EUR/t-ar',
        ...sharesIn('mill', shares),
        ...sharesIn('other', shares),
        ...figures,
      },
    }),
  );
}

/** The first material takes what the others leave. */
function sharesIn(route: string, { pre, virgin }: Shares): Record<string, string> {
  return {
    [`${route}.line.grade.cuttings.share`]: `${String(pre)} %`,
    [`${route}.line.grade.pulp.share`]: `${String(virgin)} %`,
  };
}

const percent = (evaluation: Evaluation, what: string): number => 100 * evaluation.number(`mill.recycled.${what}`);

// Definition: ISO 14021:2016, 7.8.1 (as quoted by public pages on recycled claims): recycled content is the share by mass of recycled material in
// the product; pre- and post-consumer material count, rework of the same process does not.
describe('recycled content', () => {
  test('is what came from before and after use over the whole: 50 + 20 of 100 is 70 %', () => {
    const made = mill({ post: 50, pre: 20, virgin: 30 });

    expect(percent(made, 'content')).toBeCloseTo(70, 9);
    expect(percent(made, 'postConsumer')).toBeCloseTo(50, 9);
    expect(percent(made, 'preConsumer')).toBeCloseTo(20, 9);
  });

  test('is 100 % of a product of recovered paper alone, and nothing of one of pulp alone', () => {
    expect(percent(mill({ post: 100, pre: 0, virgin: 0 }), 'content')).toBeCloseTo(100, 9);
    expect(percent(mill({ post: 0, pre: 0, virgin: 100 }), 'content')).toBeCloseTo(0, 9);
  });

  test('does not rise with broke, which is rework', () => {
    const [little, much] = ['2 %', '25 %'].map((broke) =>
      percent(mill({ post: 50, pre: 20, virgin: 30 }, { 'mill.machine.broke': broke }), 'content'),
    );

    expect(little).toBeCloseTo(70, 9);
    expect(much).toBeCloseTo(little ?? NaN, 9);
  });

  test('counts additives in the whole: a tenth of them makes 70 % of the fibre 63 % of the product', () => {
    const made = mill({ post: 50, pre: 20, virgin: 30 }, { 'mill.machine.surfaceShare': '10 %' });

    expect(percent(made, 'fibreOnly')).toBeCloseTo(70, 9);
    expect(percent(made, 'content')).toBeCloseTo(63, 9);
  });

  test('is counted after losses: 70 fed that keep 0.68 beside 30 that keep all make 61.34 %, not 70', () => {
    // 70 x 0.68 = 47.6; 47.6/(47.6 + 30) = 0.61340.
    const made = mill(
      { post: 70, pre: 0, virgin: 30 },
      { 'material.paper.ash': '32 %', 'mill.line.slush.removal.ash': '100 %' },
    );

    expect(percent(made, 'content').toFixed(2)).toBe('61.34');
  });
});
