import { type Quantity, constant } from '../../kernel/expression/quantity.ts';
import type { Plant } from '../plant.ts';
import type { Sheet } from '../sheet.ts';
import { type EffectCause, effectId } from './effect-ids.ts';
import type { EffectInputs } from './effect-inputs.ts';
import { type Alone, worthOf } from './following-cost.ts';

const one = constant('1');

/** Money that each cause costs a year, EUR/a; a gain is negative. */
export type Steps = Readonly<Record<EffectCause, Quantity>>;

/**
 * Everything that is made sells, in the hours of the reference: T = T0 f e tonnes are made, T/g of them count for the customer, the share u sells
 * for d less. Against the reference a year costs T0 (1 - f) c for speed, T0 f (1 - e) c for breaks with c the contribution, u T d for second
 * quality, and (T - T/g)(price - u d) for a heavier sheet, whose fewer sales also have fewer seconds among them.
 */
export function soldOutSteps(sheet: Sheet, { route, mill }: Plant, inputs: EffectInputs, alone: Alone): Steps {
  const where = route.label;
  const tonnes = (name: string, label: string, quantity: Quantity, note: string): Quantity =>
    sheet.define(effectId(route.id, name), label, 't/a', quantity, { where, note });
  const { speed, time, seconds, service, allowance } = inputs;
  const made = tonnes(
    'soldOut.tonnes',
    'Tonnes made a year, sold out',
    mill.tonnes.times(speed).times(time),
    'Tonnes of the reference times speed and time running.',
  );
  const slower = tonnes(
    'tonnesFewer.slower',
    'Tonnes lost to a slower machine',
    mill.tonnes.times(speed.complement()),
    'Tonnes of the reference times what speed falls short.',
  );
  const broken = tonnes(
    'tonnesFewer.breaks',
    'Tonnes lost to breaks and washes',
    mill.tonnes.times(speed).times(time.complement()),
    'Tonnes at the speed there is, times the share of time that is lost.',
  );
  const second = tonnes(
    'soldOut.secondTonnes',
    'Tonnes of second quality, sold out',
    made.times(seconds),
    'Tonnes made times the share of second quality.',
  );
  const heavier = tonnes(
    'tonnesFewer.heavier',
    'Tonnes that a heavier sheet takes from what is sold',
    made.times(service.minus(one)).dividedBy(service),
    'Tonnes made less those tonnes over the tonnes for the same service.',
  );
  const sold = alone.price.minus(seconds.times(allowance));
  return {
    slower: worthOf(sheet, slower, alone.contribution),
    breaks: worthOf(sheet, broken, alone.contribution),
    seconds: second.times(allowance),
    heavier: worthOf(sheet, heavier, sold),
  };
}
