import type { MachineEffect, Spread } from '../../../src/index.ts';

/** What stands beside a slot: a result with the words around it, or words alone. */
export interface Consequence {
  /** Quantity whose working opens; null where there are only words. */
  readonly id: string | null;
  readonly before?: string;
  /** Sign of money before the figure. */
  readonly symbol?: string;
  readonly value?: number;
  readonly decimals?: number;
  readonly after: string;
}

export interface EffectRow {
  readonly key: string;
  readonly label: string;
  /** Inputs of the two routes; money that both share has one slot, on the right. */
  readonly base: string | null;
  readonly with: string;
  readonly unit: string;
  readonly left: Consequence | null;
  readonly right: Consequence;
}

/** The rows of the table: what a person says of the machine of each route, and what comes of it in the view in force. */
export function effectRows(spread: Spread, effect: MachineEffect, symbol: string): readonly EffectRow[] {
  const isSoldOut = effect.inForce === 'soldOut';
  const [base, other] = [spread.base.id, spread.with.id];
  const at = (id: string): number => effect.figures[id] ?? NaN;
  const result = (id: string, after: string, more: Partial<Consequence> = {}): Consequence => ({
    id,
    value: at(id),
    decimals: 0,
    after,
    ...more,
  });
  const difference = (name: string, unit: string, more: string, fewer: string): Consequence => {
    const id = `difference.machineEffect.${name}`;
    const value = at(id);
    return result(id, value === 0 ? `${unit} a year` : `${unit} a year ${value < 0 ? fewer : more}`, {
      value: Math.abs(value),
    });
  };
  const facing = (name: string): Pick<EffectRow, 'base' | 'with'> => ({
    base: `${base}.machine.${name}`,
    with: `${other}.machine.${name}`,
  });
  const lost = (name: string): Consequence =>
    isSoldOut
      ? difference(`tonnesFewer.${name}`, 't', 'fewer', 'more')
      : difference(`extraHours.${name}`, 'h', 'more', 'fewer');
  const seconds = isSoldOut ? 'soldOut.secondTonnes' : 'ordersLimited.secondTonnes';
  const words = (after: string): Consequence => ({ id: null, after });
  return [
    {
      key: 'speed',
      label: 'Speed',
      ...facing('speed'),
      unit: '%',
      left: result('product.tonnes', 't a year'),
      right: lost('slower'),
    },
    {
      key: 'time',
      label: 'Time running, breaks and washes',
      ...facing('time'),
      unit: '%',
      left: result('product.hours', 'h a year'),
      right: lost('breaks'),
    },
    {
      key: 'seconds',
      label: 'Second quality',
      ...facing('seconds'),
      unit: '%',
      left: result(`${base}.machineEffect.${seconds}`, 't a year'),
      right: difference(seconds, 't', 'more', 'fewer'),
    },
    {
      key: 'allowance',
      label: 'Second quality sells for less by',
      base: null,
      with: 'machine.secondsAllowance',
      unit: `${symbol}/t`,
      left: null,
      right: words('both routes'),
    },
    {
      key: 'service',
      label: 'Sheet weight for the same service',
      ...facing('serviceFactor'),
      unit: '',
      left: null,
      right: isSoldOut
        ? difference('tonnesFewer.heavier', 't', 'fewer to sell', 'more to sell')
        : difference('ordersLimited.tonnesMore', 't', 'more to make', 'fewer to make'),
    },
    {
      key: 'premium',
      label: 'Sells for more than the reference by',
      base: `${base}.priceDifference`,
      with: `${other}.priceDifference`,
      unit: `${symbol}/t`,
      left: null,
      right: words('a tonne of the reference'),
    },
    {
      key: 'price',
      label: 'Price of the product',
      base: 'product.contribution',
      with: 'product.price',
      unit: `${symbol}/t`,
      left: words('or a tonne brings'),
      right: result(`${other}.machineEffect.contribution`, '', {
        before: 'a lost tonne is worth ',
        symbol,
        decimals: 2,
      }),
    },
    {
      key: 'hour',
      label: 'An extra hour costs',
      base: null,
      with: 'machine.extraHour',
      unit: `${symbol}/h`,
      left: null,
      right: isSoldOut ? words('when orders are limited') : difference('extraHours', 'h', 'more', 'fewer'),
    },
  ];
}
