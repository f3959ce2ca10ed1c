import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Lot, Lots } from '../../../src/case/lots.ts';
import type { PricedLot } from '../../../src/study/lots/priced-lot.ts';
import { priceLots } from '../../../src/study/lots/price-lots.ts';
import { openLot } from '../../../src/study/lots/open-lot.ts';
import { type OpenCase, openCase } from '../../../src/study/open-case.ts';

// The cheap wet lot: all figures invented, all results worked by hand. The line removes all unusable material and 8 % of the paper, its
// rejects are 55 % dry and cost 100 a wet tonne, and a dry tonne of stock is a tonne of product.
// A: mean (12.1 + 13.4 + 11.8 + 14.0 + 12.7)/5 = 12.80; squares 0.49 + 0.36 + 1.00 + 1.44 + 0.01 = 3.30, s = sqrt(3.30/4) = 0.9083;
// 2.7764 x 0.9083/sqrt(5) = 1.1278. Dry 24 x 0.872 = 20.928; stock 20.928 x 0.96 x 0.92 = 18.48361.
// Paid (24 x 0.872/0.9 =) 23.25333 x 125 = 2906.667; freight 336; rejects (20.928 - 18.48361)/0.55 x 100 = 444.434; sum 3687.10.
// B: dry 21.72, stock 19.68266; 3144 + 240 + 370.425 = 3754.43, over the stock 190.748.
// Walk-away for A: (190.748 x 18.48361 - 336 - 444.434)/23.25333 = 118.06.
const story = ((): OpenCase => {
  const opened = openCase(readFileSync(new URL('../../../examples/stories/s4.tonne', import.meta.url), 'utf8'));
  if (!opened.ok) throw new Error(JSON.stringify(opened.problems));
  return opened.value;
})();
const offered = story.content.lots!;

function priced(lots: Lots = offered): readonly PricedLot[] {
  return priceLots(story, '2026-09-30', lots)!.lots;
}

const settledBy = (settlement: Lot['settlement']): Lots => ({
  ...offered,
  offers: offered.offers.map((lot) => (lot.id === 'a' ? { ...lot, settlement } : lot)),
});

describe('what five samples of lot A say', () => {
  const { moisture } = priced()[0]!;

  test('is a mean of 12.80 % that spreads by 0.9083', () => {
    expect(moisture.mean.toFixed(2)).toBe('12.80');
    expect(moisture.deviation!.toFixed(4)).toBe('0.9083');
  });

  test('is an interval from 11.67 to 13.93 %', () => {
    expect([moisture.low!.toFixed(2), moisture.high!.toFixed(2)]).toEqual(['11.67', '13.93']);
  });
});

describe('lot A', () => {
  test('is paid for 23.2533 t on the dry basis and 23.328 t point for point', () => {
    expect(priced()[0]!.settled.payable.toFixed(4)).toBe('23.2533');
    expect(priced(settledBy('point for point'))[0]!.settled.payable.toFixed(3)).toBe('23.328');
  });

  test('gives 18.48361 bone-dry tonnes of stock', () => {
    expect((priced()[0]!.stockPerTonne * 24).toFixed(5)).toBe('18.48361');
  });

  test('costs 199.48 a tonne of stock, where lot B costs 190.75: it looks 6 cheaper and is 8.73 dearer', () => {
    const [a, b] = priced();

    expect([a!.cost.toFixed(2), b!.cost.toFixed(2)]).toEqual(['199.48', '190.75']);
    expect(b!.asked - a!.asked).toBe(6);
    expect((a!.cost - b!.cost).toFixed(2)).toBe('8.73');
    expect([a!.rank, b!.rank]).toEqual([2, 1]);
  });

  test('costs the same to the last digit in the money of record', () => {
    const record = openLot(story, offered.offers[0]!)!;

    expect(record.ok && record.value.values.exact('recovered.cost.total').slice(0, 16)).toBe('199.479504525376');
  });

  test('may cost 118.06 a payable tonne against lot B, from 118.24 to 117.87 over the moisture with the claim clause', () => {
    const { walkAway } = priced()[0]!;

    expect(walkAway.against).toBe('best other lot');
    expect(walkAway.price.toFixed(2)).toBe('118.06');
    expect([walkAway.high!.toFixed(2), walkAway.low!.toFixed(2)]).toEqual(['118.24', '117.87']);
  });

  test('may cost from 116.05 to 112.73 a weighed tonne without the claim clause', () => {
    const { walkAway } = priced(settledBy('as weighed'))[0]!;

    expect([walkAway.high!.toFixed(2), walkAway.low!.toFixed(2)]).toEqual(['116.05', '112.73']);
  });
});
