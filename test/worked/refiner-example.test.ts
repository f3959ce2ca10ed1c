import { describe, expect, test } from 'vitest';
import { typedFigure } from '../support/typed-figure.ts';
import { evaluated } from '../support/evaluation.ts';
import { smallCase } from '../support/small-case.ts';

// Source: "Stock Prep Refining", slides with the text of the AFT Finebar training manual, undated, example calculations:
// 1200 l/min at 5.3 % is 3.8 t/h (exact 3.816); 575 hp drawn and 115 hp at no load give (575 - 115) x 0.746 = 343.2 kW net (the
// slides print 342) and 90 kWh/t net; 500 US gallons a minute at 4.5 % is 135 short tons a day. Gross (derived): 112.4 kWh/t.

function typed(unit: string, text: string): number {
  const found = typedFigure({ id: 'typed', label: 'Typed', unit, allowed: {} }, text);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return Number(found.value);
}

/** A refiner through which the whole line passes, made to run at the throughput asked for. */
function refiner(tonnesAYear: string, hours: string, figures: Readonly<Record<string, string>> = {}) {
  return evaluated(
    smallCase({
      stages: [{ id: 'refine', like: 'refiner-sw', power: 'net and no-load' }],
      figures: {
        'product.tonnes': tonnesAYear,
        'product.hours': hours,
        'price.electricity': '0.1 EUR/kWh',
        'mill.line.refine.net': '89.9 kWh/bdt',
        'mill.line.refine.noLoad': '0 kW',
        ...figures,
      },
    }),
  );
}

describe('the refiner that takes 1200 l/min at 5.3 %', () => {
  // 8000 hours at 3.816 t/h are 30,528 t. 1 hp is 0.746 kW in the slides; the hp-day here is 24 h of 0.745699872 kW.
  const netHorsepowerDays = (575 - 115) / 24 / 3.816;
  const example = refiner('30528 t/a', '8000 h/a', {
    'mill.line.refine.net': `${netHorsepowerDays.toFixed(12)} hpd/bdt`,
    'mill.line.refine.noLoad': `${(115 * 0.745699872).toFixed(9)} kW`,
    'mill.line.refine.edgeLength': '100 km/s',
  });

  test('passes 3.816 t of stock an hour', () => {
    const flow = typed('m3/h', `${String(1200 * 60)} l/h`);
    const consistency = typed('1', '5.3 %');

    expect(flow * consistency).toBeCloseTo(3.816, 12);
    expect(example.number('mill.line.refine.throughput')).toBeCloseTo(3.816, 12);
  });

  test('works at 89.9 kWh/t net', () => {
    const net = example.number('mill.line.refine.net');

    expect(net.toFixed(1)).toBe('89.9');
    expect(net).toBeCloseTo(90, 0);
  });

  test('is billed at 112.4 kWh/t gross', () => {
    expect(example.number('mill.line.refine.gross').toFixed(1)).toBe('112.4');
    expect(example.number('mill.electricity.refining').toFixed(1)).toBe('112.4');
    expect(example.number('mill.cost.electricity.refining')).toBeCloseTo(11.24, 2);
  });

  test('loads its edges with the net power alone', () => {
    // 343.0 kW over 100 km/s = 3.43 kW per km/s = 3.43 J/m (definition of the specific edge load, same slides).
    expect(example.number('mill.line.refine.edgeLoad')).toBeCloseTo(3.43, 2);
  });

  test('costs more per tonne when less passes, since the no-load power stays', () => {
    // Half the tonnes: 89.9 + 2 x 22.47 = 134.8 kWh/t.
    const half = example.withChanges({ 'product.tonnes': '15264' });

    expect(half.number('mill.line.refine.gross').toFixed(1)).toBe('134.8');
  });
});

test('500 US gallons a minute at 4.5 % are 135 short tons a day, to the rounding of the rule', () => {
  // The rule takes 6.0 for 60 x 24 min x 3.785411784 l / 907.18474 kg = 6.0086 (a US gallon is 3.785411784 l by definition).
  const perHour = typed('m3/h', `${String(500 * 60 * 3.785411784)} l/h`) * typed('1', '4.5 %');

  const ruled = refiner(`${String(135 * 365)} st/a`, '8760 h/a').number('mill.line.refine.throughput');

  expect(Math.abs(ruled / perHour - 1)).toBeLessThan(0.0015);
});
