import { describe, expect, test } from 'vitest';
import type { Lot } from '../../../src/case/lots.ts';
import { lotLine } from '../../../src/study/lots/lot-line.ts';
import { openLot } from '../../../src/study/lots/open-lot.ts';
import { openDemonstration } from './open-demonstration.ts';
import { lotOf, pricedFor } from './sample-lots.ts';

const open = openDemonstration();

function record(lot: Lot, id: string): number {
  const found = openLot(open, lot);
  if (found?.ok !== true) throw new Error(JSON.stringify(found?.ok === false ? found.problems : null));
  return found.value.values.number(id);
}

const lots: readonly Lot[] = [
  lotOf('plain'),
  lotOf('weighed', { settlement: 'as weighed', moisture: ['14'] }),
  lotOf('points', { settlement: 'point for point', moisture: ['16'] }),
  lotOf('air', { basis: 'air-dry', moisture: ['7', '8.5', '9.9'] }),
  lotOf('bone', { basis: 'bone-dry' }),
  lotOf('fee', { figures: { price: '-15' }, moisture: ['18'] }),
  lotOf('kinds', { figures: { lights: '1.1', heavies: '0.4', wire: '0.2', wetStrength: '2.2' } }),
  lotOf('ash', { figures: { ash: '14.5' } }),
  lotOf('office', { grade: '2.06.00' }),
  lotOf('claimed', { grade: '1.04.00', remedy: 'claim', unusable: ['7'] }),
  lotOf('agreed', { figures: { unusableLimit: '2', moistureLimit: '9', moistureTolerance: '0.5' } }),
  lotOf('late', { figures: { paymentDays: '60' } }),
  lotOf('far', { delivery: 'ex works by distance', figures: { distance: '230', freightRate: '0.11' } }),
];

describe('a lot on the tape', () => {
  const priced = pricedFor(open, lots, { creditRate: '6' });

  test.each(lots.map((lot, place) => [lot.id, place] as const))(
    'costs what the case with it costs in decimals: %s',
    (_, place) => {
      const found = priced[place]!;
      const withRate = { ...open, content: { ...open.content, lots: { creditRate: '6', offers: [] } } };
      const record = openLot(withRate, lots[place]!);
      if (record?.ok !== true) throw new Error('It cannot be worked out');
      const exact = record.value.values.number('recovered.cost.total');
      const carbon = record.value.values.number('recovered.footprint.total');

      expect(Math.abs(found.cost / exact - 1)).toBeLessThan(1e-11);
      expect(Math.abs(found.carbon / carbon - 1)).toBeLessThan(1e-11);
    },
  );

  test('moves the cost of the case at all: no two of these cost the same', () => {
    expect(new Set(priced.map(({ cost }) => cost.toFixed(6))).size).toBe(lots.length);
  });
});

describe('a lot of the very paper that the line is fed', () => {
  const { content, model } = open;
  const { material } = lotLine(open)!;
  const given = (what: string): string => content.inputs[`material.${material}.${what}`]?.value ?? '0';

  test('costs what the case costs today', () => {
    const same = lotOf('same', {
      figures: {
        price: given('price'),
        freight: given('freight'),
        moistureLimit: '10',
        moistureTolerance: given('moistureTolerance'),
      },
    });
    const { moisture: _moisture, unusable: _unusable, ...unread } = same;
    const [found] = pricedFor(open, [unread]);

    expect(model.problems).toEqual([]);
    expect(found!.cost).toBeCloseTo(open.values.number('recovered.cost.total'), 9);
    expect(record(unread, 'recovered.cost.total')).toBeCloseTo(open.values.number('recovered.cost.total'), 9);
  });
});
