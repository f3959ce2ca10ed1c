import { boughtPower } from './bought-power.ts';
import type { Prices } from './prices.ts';
import { type InputSpec, type Sheet, notNegative } from './sheet.ts';

const priceSpec: InputSpec = {
  id: 'price.electricityMarginal',
  label: 'Electricity, marginal: the next kilowatt-hour bought or spared',
  unit: 'EUR/kWh',
  allowed: notNegative,
};

export const marginalPowerIds = {
  price: priceSpec.id,
  use: 'difference.electricity',
  more: 'difference.marginalPower',
  total: 'difference.totalAtMarginalPower',
  totalPerYear: 'difference.totalAtMarginalPowerPerYear',
} as const;

/**
 * The statements price all electricity at the average. What one route takes more than the other is bought at the margin, which may be
 * dearer or cheaper: the difference is told a second time with that part at the marginal price instead, and never with both. Nothing where
 * nobody gave a marginal price.
 */
export function writeMarginalPower(sheet: Sheet, prices: Prices): void {
  if (!sheet.has(priceSpec)) return;
  const { base, with: other } = sheet.case.compare;
  const where = 'Difference';
  const money = sheet.case.currency;
  const use = sheet.define(
    marginalPowerIds.use,
    'Difference in electricity bought',
    'kWh/t',
    boughtPower(sheet, other).minus(boughtPower(sheet, base)),
    { where },
  );
  const more = sheet.define(
    marginalPowerIds.more,
    'What the marginal price of power adds to the difference',
    'EUR/t',
    use.times(sheet.input(priceSpec).minus(prices.electricity)),
    {
      where,
      note: 'Difference in electricity times the marginal price less the average, at which it is counted already.',
    },
  );
  const total = sheet.define(
    marginalPowerIds.total,
    'Difference of the whole cost, its power at the marginal price',
    'EUR/t',
    sheet.graph.later('difference.total', `${money}/t`).plus(more),
    { where, note: 'The difference in electricity at the marginal price in place of the average.' },
  );
  sheet.define(
    marginalPowerIds.totalPerYear,
    'Difference of the whole cost, its power at the marginal price, per year',
    'EUR/a',
    total.times(sheet.graph.later('product.tonnes', 't/a')),
    { where },
  );
}
