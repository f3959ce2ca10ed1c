import type { Quantity } from '../../kernel/expression/quantity.ts';
import { plainFigure } from '../figure.ts';
import type { Plant } from '../plant.ts';
import { type Sheet, fraction, notNegative } from '../sheet.ts';
import { contributionId, effectNames, priceId, soldOutId } from './effect-ids.ts';

/** What a furnish does to the machine of a route, against the reference: plain numbers, 1 or nothing where there is no effect. */
export interface EffectInputs {
  readonly speed: Quantity;
  /** Time that the machine makes paper: breaks and washes take from it. */
  readonly time: Quantity;
  /** Share of what is sold as second quality. */
  readonly seconds: Quantity;
  readonly service: Quantity;
  /** What a tonne of second quality sells for less, EUR/t. */
  readonly allowance: Quantity;
  /** Cost of an hour that is run beyond the reference, EUR/h, hourly charges of the statement apart. */
  readonly extraHour: Quantity;
  readonly hoursAvailable: Quantity;
  /** Price of the product, and what a tonne of it brings over the costs that follow the tonne, EUR/t; without a figure unless somebody gives one. */
  readonly price: Quantity;
  readonly contribution: Quantity;
  /** 1 where the machine is sold out, 0 where orders limit it. */
  readonly soldOut: Quantity;
}

const relative = { above: '0', most: '200' } as const;
const none = (value: string, unit: string) => plainFigure(value, value, value, unit, 'none', 'none entered');

export function effectInputs(sheet: Sheet, { machine }: Plant): EffectInputs {
  const percent = (name: keyof typeof effectNames, value: string, allowed: object): Quantity =>
    machine.input(name, effectNames[name], '1', { figure: none(value, '%'), allowed });
  return {
    speed: percent('speed', '100', relative),
    time: percent('time', '100', relative),
    seconds: percent('seconds', '0', fraction),
    service: machine.service,
    allowance: sheet.input({
      id: 'machine.secondsAllowance',
      label: 'Second quality sells for less by',
      unit: 'EUR/t',
      figure: none('0', 'EUR/t'),
      allowed: notNegative,
    }),
    extraHour: sheet.input({
      id: 'machine.extraHour',
      label: 'An extra hour costs',
      unit: 'EUR/h',
      figure: none('0', 'EUR/h'),
      allowed: notNegative,
    }),
    hoursAvailable: sheet.input({
      id: 'machine.hoursAvailable',
      label: 'Hours a year that could be run',
      unit: 'h/a',
      figure: plainFigure('8784', '8784', '8784', 'h/a', 'none', 'none entered; no year has more hours'),
      allowed: { above: '0', most: '8784' },
    }),
    price: sheet.awaited({ id: priceId, label: 'Price of the product', unit: 'EUR/t', allowed: notNegative }),
    contribution: sheet.awaited({
      id: contributionId,
      label: 'Contribution of a tonne, where no price is given',
      unit: 'EUR/t',
    }),
    soldOut: sheet.input({
      id: soldOutId,
      label: 'What limits the machine: 1 sold out, 0 orders',
      unit: '1',
      figure: none('0', '1'),
      allowed: { least: '0', most: '1' },
    }),
  };
}
