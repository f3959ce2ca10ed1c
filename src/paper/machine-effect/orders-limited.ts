import { type Quantity, constant, total } from '../../kernel/expression/quantity.ts';
import type { Plant } from '../plant.ts';
import type { Sheet } from '../sheet.ts';
import { effectId } from './effect-ids.ts';
import type { EffectInputs } from './effect-inputs.ts';
import type { Alone } from './following-cost.ts';
import type { Steps } from './sold-out.ts';

const one = constant('1');

export interface OrdersLimited extends Steps {
  /** What the extra hours of a heavier sheet cost without the extra tonnes, which the lines of the statement charge, EUR/a. */
  readonly heavierHours: Quantity;
}

/**
 * The reference's orders are made and no more: T = T0 g tonnes, in H = H0 g/(f e) hours. A year costs H0 (1 - f)/f hours for speed,
 * H0 (1 - e)/(f e) for breaks, u T0 d for second quality, and for a heavier sheet T0 (g - 1) tonnes more to make in H0 (g - 1)/(f e) hours.
 */
export function ordersLimitedSteps(
  sheet: Sheet,
  { route, mill }: Plant,
  inputs: EffectInputs,
  alone: Alone,
): OrdersLimited {
  const where = route.label;
  const { speed, time, seconds, service, allowance } = inputs;
  const hours = (name: string, label: string, quantity: Quantity, note: string): Quantity =>
    sheet.define(effectId(route.id, name), label, 'h/a', quantity, { where, note });
  const both = speed.times(time);
  const slower = hours(
    'extraHours.slower',
    'Extra hours of a slower machine',
    mill.hours.times(speed.complement()).dividedBy(speed),
    'Hours of the reference at the speed there is, less those hours.',
  );
  const broken = hours(
    'extraHours.breaks',
    'Extra hours for breaks and washes',
    mill.hours.times(time.complement()).dividedBy(both),
    'Hours at the speed there is, over the share of time that makes paper, less those hours.',
  );
  const heavy = hours(
    'extraHours.heavier',
    'Extra hours of a heavier sheet',
    mill.hours.times(service.minus(one)).dividedBy(both),
    'Hours for the tonnes that the same service takes more, at the speed and time there are.',
  );
  const extra = hours(
    'extraHours',
    'Extra hours that the orders take',
    total([slower, broken, heavy], 'h/a'),
    'For speed, for breaks and washes, and for a heavier sheet.',
  );
  const room = inputs.hoursAvailable.minus(mill.hours);
  const left = hours(
    'hoursLeft',
    'Hours left over once the orders are made',
    room.minus(extra).within({ least: '0' }),
    'Hours that could be run less those of the reference and the extra ones. Where too few are left the orders cannot be made.',
  );
  // The first branch is taken only where `left` fails, and passes its failure on.
  const run = (needed: Quantity): Quantity => extra.whenAbove(room, left, needed);
  const second = sheet.define(
    effectId(route.id, 'ordersLimited.secondTonnes'),
    'Tonnes of second quality, orders limited',
    't/a',
    mill.tonnes.times(seconds),
    { where, note: 'Tonnes sold times the share of second quality.' },
  );
  const more = sheet.define(
    effectId(route.id, 'ordersLimited.tonnesMore'),
    'More tonnes to make for the same orders',
    't/a',
    mill.tonnes.times(service.minus(one)),
    { where, note: 'Tonnes of the reference times what the same service takes more.' },
  );
  const heavierHours = run(heavy).times(alone.perHour);
  return {
    slower: run(slower).times(alone.perHour),
    breaks: run(broken).times(alone.perHour),
    seconds: second.times(allowance),
    heavier: more.times(alone.perTonne).plus(heavierHours),
    heavierHours,
  };
}
