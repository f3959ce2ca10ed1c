import { type Quantity, constant, total } from '../../kernel/expression/quantity.ts';
import type { AccountId } from '../accounts.ts';
import type { Plant } from '../plant.ts';
import type { Sheet } from '../sheet.ts';
import type { LineSpec } from '../statement-writer.ts';
import { contributionId, effectId, priceId } from './effect-ids.ts';
import type { EffectInputs } from './effect-inputs.ts';

/** A route's money before the machine has any effect. */
export interface Alone {
  /** What follows the tonnes made, EUR/t, for a tonne made. */
  readonly perTonne: Quantity;
  /** The whole cost at the reference's tonnes, hours and sheet weight, EUR/a. */
  readonly whole: Quantity;
  /** What an avoidable hour costs by the charges of the statement, EUR/h. */
  readonly perHour: Quantity;
  /** What a tonne sells for, and what it brings over the costs that follow it, EUR/t. */
  readonly price: Quantity;
  readonly contribution: Quantity;
}

/** A difference of price is no cost of making a tonne; it belongs to what the tonne sells for. */
const isRevenue = (account: AccountId): boolean => account === 'productPrice';
const followsTonnes = ({ behaviour = 'per tonne', account }: LineSpec): boolean =>
  behaviour === 'per tonne' && !isRevenue(account);

/**
 * Lines that follow the tonne stand in the statement for the tonnes of the same service, that is times the service factor; over that factor
 * they are what one tonne made costs. Everything else does not know the factor.
 */
export function costsAlone(
  sheet: Sheet,
  { route, mill }: Plant,
  inputs: EffectInputs,
  lines: readonly LineSpec[],
): Alone {
  const where = route.label;
  const { currency } = sheet.case;
  const each = (kind: 'cost' | 'costPerYear', unit: string, wanted: (line: LineSpec) => boolean): Quantity =>
    total(
      lines
        .filter(wanted)
        .map(({ account, key }) => sheet.graph.later(`${route.id}.${kind}.${account}.${key}`, `${currency}/${unit}`)),
      `${currency}/${unit}`,
    );
  const perTonne = sheet.define(
    effectId(route.id, 'costPerTonne'),
    'Costs that follow the tonnes made',
    'EUR/t',
    each('cost', 't', followsTonnes).dividedBy(inputs.service),
    { where, note: 'Every line of the statement that follows the tonne, over the tonnes for the same service.' },
  );
  const whole = sheet.define(
    effectId(route.id, 'costsAlone'),
    'Whole cost before any machine effect, per year',
    'EUR/a',
    perTonne.times(mill.tonnes).plus(each('costPerYear', 'a', (line) => !followsTonnes(line))),
    {
      where,
      note: 'Costs that follow the tonnes, for the tonnes of the reference, and everything else of the statement.',
    },
  );
  const hourly = lines.filter(({ behaviour, avoidable = true }) => behaviour === 'per hour' && avoidable);
  const perHour = sheet.define(
    effectId(route.id, 'costPerHour'),
    'What an extra hour costs',
    'EUR/h',
    total([inputs.extraHour, ...hourly.map(({ amount }) => amount)], `${currency}/h`),
    { where, note: 'The cost of an extra hour, and hourly charges of the statement that stop when the machine does.' },
  );
  const price = sheet.define(
    effectId(route.id, 'price'),
    'What a tonne sells for',
    'EUR/t',
    referencePrice(sheet, inputs).plus(sheet.graph.later(`${route.id}.priceDifference`, `${currency}/t`)),
    { where, note: 'The price of the product, and what this one fetches above it.' },
  );
  const contribution = sheet.define(
    effectId(route.id, 'contribution'),
    'What a lost tonne is worth',
    'EUR/t',
    price.minus(perTonne),
    { where, note: 'What it sells for less the costs that follow the tonnes made.' },
  );
  return { perTonne, whole, perHour, price, contribution };
}

/** The price that was given; where only a contribution was, that and what a tonne of the base route costs to make. */
function referencePrice(sheet: Sheet, { price, contribution }: EffectInputs): Quantity {
  if (sheet.isGiven(priceId) || !sheet.isGiven(contributionId)) return price;
  const made = sheet.graph.later(effectId(sheet.case.compare.base, 'costPerTonne'), `${sheet.case.currency}/t`);
  return contribution.plus(made);
}

/**
 * Tonnes times what they are worth. Where nobody has said what the product sells for, it is worked out only if there are any tonnes: what
 * nobody needs may have no figure.
 */
export function worthOf(sheet: Sheet, amount: Quantity, worth: Quantity): Quantity {
  if (sheet.isGiven(priceId) || sheet.isGiven(contributionId)) return amount.times(worth);
  const nothing = constant('0', amount.unit);
  const size = amount.greaterOf(nothing.minus(amount));
  const product = amount.times(worth);
  return size.whenAbove(nothing, product, constant('0', product.unit));
}
