import { describe, expect, test } from 'vitest';
import type { Lot } from '../../../src/case/lots.ts';
import { priceLots } from '../../../src/study/lots/price-lots.ts';
import { changeInput } from '../../../src/study/open-case.ts';
import { openDemonstration } from './open-demonstration.ts';
import { lotOf, pricedFor, today } from './sample-lots.ts';

const open = openDemonstration();
const at = (lot: Lot, price: number): Lot => ({ ...lot, figures: { ...lot.figures, price: String(price) } });
const costOf = (lot: Lot, more = {}): number => pricedFor(open, [lot], more)[0]!.cost;

describe('the price to walk away at', () => {
  const rival = lotOf('rival', { moisture: ['9'], unusable: ['2'] });
  const wet = lotOf('wet', { moisture: ['17'] });

  test('makes the lot cost exactly what the best other lot costs', () => {
    const [first] = pricedFor(open, [wet, rival, lotOf('dear', { figures: { price: '190' } })]);

    expect(first!.walkAway.otherLot).toBe('rival');
    expect(costOf(at(wet, first!.walkAway.other))).toBeCloseTo(costOf(rival), 9);
  });

  test('is exact where it is a fee that the buyer must receive, which is settled as weighed', () => {
    const target = String(costOf(at(wet, -40)));
    const { walkAway } = pricedFor(open, [wet], { target, against: 'target cost' })[0]!;

    expect(walkAway.price).toBeCloseTo(-40, 8);
  });

  test('is nothing where the target is what the lot costs for nothing', () => {
    const target = String(costOf(at(wet, 0)));

    expect(pricedFor(open, [wet], { target, against: 'target cost' })[0]!.walkAway.price).toBeCloseTo(0, 8);
  });

  test('against virgin pulp moves the same share to the virgin line, and never the whole route of a mixed furnish', () => {
    const found = priceLots(open, today, { offers: [wet] })!;
    const [first] = found.lots;

    expect(found.virgin!.isWholeRoute).toBe(false);
    expect(costOf(at(wet, first!.walkAway.virgin))).toBeCloseTo(found.virgin!.cost, 8);
    // The whole virgin route would credit this lot with what the other recovered line saves too.
    expect(found.virgin!.cost).not.toBeCloseTo(open.values.number('virgin.cost.total'), 0);
  });

  test('costs of virgin pulp in the same share are those of the case whose balancing line of pulp takes it', () => {
    const { line, virgin } = priceLots(open, today, { offers: [wet] })!;
    const moved = changeInput(open, `${line.route.id}.${line.line.id}.share`, '0');
    const balance = line.route.lines.find(({ id }) => id === line.route.balance)!;

    expect(virgin!.label).toBe(balance.label);
    expect(moved.ok && moved.value.values.number(`${line.route.id}.cost.total`)).toBeCloseTo(virgin!.cost, 8);
  });

  test('may be higher by what waiting for the money is worth', () => {
    const paidAtOnce = pricedFor(open, [wet, rival])[0]!.walkAway.other;
    const later = { ...wet, figures: { ...wet.figures, paymentDays: '73' } };
    const paidLater = pricedFor(open, [later, rival], { creditRate: '5' })[0]!.walkAway.other;

    // 5 % a year for 73 days is 1 %.
    expect(paidLater).toBeCloseTo(paidAtOnce / 0.99, 9);
  });

  test('spans the intervals of moisture and unusable material together', () => {
    const read = lotOf('read', { moisture: ['13', '15', '14.2'], unusable: ['2', '3', '4.5'] });
    const [first] = pricedFor(open, [read, rival]);
    const single = (m: number, u: number): number =>
      pricedFor(open, [{ ...read, moisture: [String(m)], unusable: [String(u)] }, rival])[0]!.walkAway.price;
    const { moisture, unusable, walkAway } = first!;

    expect(walkAway.high).toBeCloseTo(single(moisture.low!, unusable.low!), 8);
    expect(walkAway.low).toBeCloseTo(single(moisture.high!, unusable.high!), 8);
  });

  test('leaves out offers that have run out, and lots that are refused', () => {
    const gone = lotOf('gone', { figures: { price: '20' }, validUntil: '2026-09-29' });
    const foul = lotOf('foul', { figures: { price: '30' }, grade: '1.04.00', unusable: ['9'], remedy: 'refuse' });
    const [first, , , expired, refused] = pricedFor(open, [wet, rival, lotOf('third'), gone, foul]);

    expect(first!.walkAway.otherLot).toBe('rival');
    expect(expired!.notes).toContainEqual({ kind: 'expired', day: '2026-09-29' });
    expect(refused!.rank).toBeNull();
  });
});

describe('what a concession is worth', () => {
  const lot = lotOf('far', {
    moisture: ['12'],
    delivery: 'ex works by distance',
    figures: { distance: '200', freightRate: '0.1' },
  });
  const [found] = pricedFor(open, [lot]);
  const worthOf = (what: string) => found!.worth.find((each) => each.what === what)!;

  test('one point of moisture: the lot with a point more costs the same at a price that is lower by so much', () => {
    const { price } = worthOf('moisture');

    expect(costOf({ ...at(lot, 120 - price), moisture: ['13'] })).toBeCloseTo(found!.cost, 8);
  });

  test('one point of unusable material, and ten kilometres, likewise', () => {
    expect(costOf({ ...at(lot, 120 - worthOf('unusable').price), unusable: ['4'] })).toBeCloseTo(found!.cost, 8);
    const farther = { ...lot, figures: { ...lot.figures, distance: '210' } };
    expect(costOf(at(farther, 120 - worthOf('distance').price))).toBeCloseTo(found!.cost, 8);
  });

  test('one unit of money on the price: so much on a tonne of product, and the payable tonnes of the lot', () => {
    const { product, lot: whole } = worthOf('price');

    expect(costOf(at(lot, 121)) - found!.cost).toBeCloseTo(product, 9);
    expect(whole).toBeCloseTo(found!.settled.payable, 9);
  });
});
