import { describe, expect, it } from 'vitest';
import {
  type Limit,
  type OpenCase,
  changeInput,
  editStructure,
  largestShare,
  limitReadings,
} from '../../../src/index.ts';
import { demonstration, valueOf } from '../../examples/demonstration.ts';
import { Dice } from '../../support/dice.ts';
import { ashLimit, twoLines } from './two-lines.ts';

const content = (value: string, more: Partial<Limit> = {}): Limit => ({
  ...ashLimit(value),
  id: 'content',
  label: 'Recycled content',
  result: 'recycled.content',
  sense: 'at least',
  ...more,
});
const names = (open: OpenCase): readonly string[] | undefined =>
  largestShare(open, 'mill')?.binding.map(({ id }) => id);

describe('the largest recovered share', () => {
  it('is where a line meets the limit: ash 1 + 19 s in per cent is 6 at s = 5/19', () => {
    const found = largestShare(twoLines([ashLimit('6')]), 'mill');

    expect(found).toMatchObject({ route: 'mill', now: 0.4 });
    expect(found?.largest).toBeCloseTo(5 / 19, 8);
    expect(found?.binding.map(({ id }) => id)).toEqual(['ash']);
  });

  it('is that of the tightest limit, which alone is said to bind', () => {
    const open = twoLines([ashLimit('12'), ashLimit('6', { id: 'tight' }), ashLimit('9', { id: 'middle' })]);

    expect(largestShare(open, 'mill')?.largest).toBeCloseTo(5 / 19, 8);
    expect(names(open)).toEqual(['tight']);
  });

  it('is the whole where every limit is kept that far: pure paper has 20 % of ash', () => {
    expect(largestShare(twoLines([ashLimit('20')]), 'mill')).toMatchObject({ largest: 1, binding: [] });
    expect(largestShare(twoLines([]), 'mill')).toMatchObject({ largest: 1, binding: [] });
  });

  it('is nothing at all where only pure pulp keeps the limit', () => {
    const found = largestShare(twoLines([ashLimit('1')]), 'mill');

    expect(found?.largest).toBeCloseTo(0, 8);
    expect(found?.binding.map(({ id }) => id)).toEqual(['ash']);
  });

  it('does not exist where even pure pulp has too much, and the limit that no share keeps is named', () => {
    expect(largestShare(twoLines([ashLimit('0.5')]), 'mill')).toMatchObject({ largest: null });
    expect(names(twoLines([ashLimit('0.5'), ashLimit('12', { id: 'loose' })]))).toEqual(['ash']);
  });

  it('does not exist where two limits leave no share between them', () => {
    // At least half of it recycled needs s = 1/2, where the ash is 10.5 %.
    const open = twoLines([ashLimit('8'), content('50')]);

    expect(largestShare(open, 'mill')).toMatchObject({ largest: null });
    expect(names(open)).toHaveLength(1);
  });

  it('reaches the whole where that is the least asked for', () => {
    expect(largestShare(twoLines([content('100')]), 'mill')).toMatchObject({ largest: 1, binding: [] });
  });

  it('holds no limit of another route against this one, nor one that does not count', () => {
    const other = ashLimit('2', { id: 'other', route: 'other' });
    const soft = ashLimit('4', { id: 'soft', kind: 'soft' });
    const open = twoLines([ashLimit('6'), other, soft]);

    expect(names(open)).toEqual(['soft']);
    expect(largestShare(open, 'mill', ({ kind }) => kind === 'hard')?.largest).toBeCloseTo(5 / 19, 8);
  });

  it('is asked of no route that has lines of one kind only', () => {
    const open = demonstration();

    expect(largestShare(open, 'virgin')).toBeNull();
    expect(largestShare(open, 'nowhere')).toBeNull();
  });

  it('counts a limit by the day: 300 t of product with 20 % of ash in the paper carry 60 t of it', () => {
    // Ash a day: 300 t x (0.01 + 0.19 s); 24 t of it are 8 %, at s = 7/19.
    const daily = ashLimit('24', { unit: 't/d' });

    expect(largestShare(twoLines([daily], { 'product.hours': '8000 h/a' }), 'mill')?.largest).toBeCloseTo(7 / 19, 8);
  });
});

describe('the share of a route with several lines of each kind', () => {
  const open = demonstration();
  const lines = ['bskp', 'bhkp', 'bctmp', 'supermarket', 'mixed'] as const;
  const { routes } = open.content;
  const balance = routes.find(({ id }) => id === 'recovered')!.balance;
  const shareOf = (id: string): number => open.values.number(`recovered.${id}.share`);
  const recovered = ['supermarket', 'mixed'] as const;
  const now = shareOf('supermarket') + shareOf('mixed');

  /** The case with another recovered share, typed line by line: recovered lines keep their proportions, virgin lines theirs. */
  function at(share: number): OpenCase {
    return lines
      .filter((id) => id !== balance)
      .reduce((from, id) => {
        const isRecovered = recovered.some((each) => each === id);
        const part = isRecovered ? shareOf(id) / now : shareOf(id) / (1 - now);
        const typed = (part * (isRecovered ? share : 1 - share) * 100).toFixed(12);
        return valueOf(changeInput(from, `recovered.${id}.share`, typed));
      }, open);
  }
  const kept = (from: OpenCase): boolean =>
    limitReadings(from).every((reading) => reading.route !== 'recovered' || reading.kept);

  it('is kept a hair below the largest and broken a hair above it, when the shares are typed in one by one', () => {
    const found = largestShare(open, 'recovered');

    expect(found?.now).toBeCloseTo(now, 12);
    expect(kept(at(found!.largest! - 1e-6))).toBe(true);
    expect(kept(at(found!.largest! + 1e-6))).toBe(false);
  });

  it('agrees with a search by hand through every twentieth of the whole', () => {
    const largest = largestShare(open, 'recovered')!.largest!;
    for (let step = 0; step <= 20; step += 1) {
      const share = Math.min(0.999_999, step / 20);
      expect([share, kept(at(share))]).toEqual([share, share <= largest]);
    }
  });

  it('has equal parts for lines that have none yet', () => {
    const bare = valueOf(
      changeInput(valueOf(changeInput(open, 'recovered.supermarket.share', '0')), 'recovered.mixed.share', '0'),
    );
    const found = largestShare(bare, 'recovered');

    expect(found?.now).toBe(0);
    expect(found?.largest).toBeGreaterThan(0);
    expect(found?.largest).toBeLessThanOrEqual(1);
  });

  it('may be balanced by a recovered line as well, with the same answer', () => {
    const handed = valueOf(editStructure(open, { kind: 'balance by line', route: 'recovered', line: 'mixed' }));

    expect(largestShare(handed, 'recovered')?.largest).toBeCloseTo(largestShare(open, 'recovered')!.largest!, 9);
  });
});

describe('the largest share under random limits', () => {
  it('is the largest that keeps them, as a search through every thousandth finds it in closed form', () => {
    const dice = new Dice(20260);
    let [found, none, whole] = [0, 0, 0];
    for (let round = 0; round < 25; round += 1) {
      const most = dice.between(0, 22);
      const least = dice.between(-20, 100);
      const open = twoLines([ashLimit(most.toFixed(4)), content(Math.max(0, least).toFixed(4))]);
      // Nothing is lost and nothing added, so the recycled content of the fibre is the share itself.
      const ceiling = (Number(most.toFixed(4)) - 1) / 19;
      const floor = Math.max(0, Number(Math.max(0, least).toFixed(4)) / 100);
      const answer = largestShare(open, 'mill')?.largest ?? null;
      const expected = ceiling < 0 || floor > Math.min(1, ceiling) ? null : Math.min(1, ceiling);
      if (expected === null) expect([round, answer]).toEqual([round, null]);
      else expect(answer).toBeCloseTo(expected, 7);
      if (expected === null) none += 1;
      else if (expected === 1) whole += 1;
      else found += 1;
    }
    // All three answers were met.
    expect(Math.min(found, none, whole)).toBeGreaterThan(0);
  });
});

describe('a share that is kept in one stretch only', () => {
  it('is found although the whole breaks a limit and the share in force breaks another', () => {
    const open = twoLines([ashLimit('12'), content('50')], { 'mill.paper.share': '20 %' });
    const found = largestShare(open, 'mill');

    expect(limitReadings(open).every(({ kept }) => kept)).toBe(false);
    // 1 + 19 s = 12 at s = 11/19 = 0.579, which is above one half.
    expect(found?.largest).toBeCloseTo(11 / 19, 8);
    expect(found?.binding.map(({ id }) => id)).toEqual(['ash']);
  });
});
