import type { Material } from '../../case/case.ts';
import type { Quantity } from '../../kernel/expression/quantity.ts';
import { materialEntries } from '../catalogue.ts';
import { type InputSpec, type Sheet, fraction, notNegative } from '../sheet.ts';
import { type ContractTerms, contractPrice } from './contract-price.ts';
import { averagePriceIdOf } from './price-ids.ts';
import { type PriceTier, leadingBuyer, priceTiersOf } from './price-tiers.ts';
import { metricTonneOf, tonneOf } from './price-unit.ts';

/** The currency of a price that is not the case's own; a price that names the case's own currency is no foreign price. */
export function foreignCurrency(sheet: Sheet, { price }: Material): string | null {
  return price.currency === undefined || price.currency === sheet.case.currency ? null : price.currency;
}

const priceLabels = {
  list: 'List price',
  net: 'Net price agreed',
  contract: 'Contract price',
  index: 'Index price',
} as const;

/** A price as it is paid, on the basis on which it is agreed. */
interface NetPrice {
  readonly net: Quantity;
  readonly unit: string;
  readonly tiers: readonly PriceTier[];
  /** What is paid where another price is asked. */
  readonly netOf: (asked: Quantity) => Quantity;
}

/**
 * Pulp is published as list, recovered paper as traded: only net prices can be compared. net = list x (1 - discount) - rebate. A price of
 * kind contract or index may be the index that a formula follows: net = max(floor, min(cap, a x index + b)) - rebate.
 */
export function netPrice(sheet: Sheet, material: Material): NetPrice {
  const id = `material.${material.id}`;
  const where = material.label;
  const abroad = foreignCurrency(sheet, material);
  const foreign = abroad !== null;
  const unit = `${abroad ?? 'EUR'}/${tonneOf(material.price)}`;
  const entry = material.like === undefined ? undefined : materialEntries.get(material.like);
  const sameBasis =
    entry !== undefined && entry.priceBasis === material.price.basis && !foreign && material.price.ton === undefined;
  const specs = formulaSpecs(material, unit, foreign);
  const follows = Object.values(specs).some((spec) => sheet.has(spec));
  const tiers = priceTiersOf(sheet, material, { unit, basis: metricTonneOf(material.price), foreign });
  const buyer = leadingBuyer(sheet.case, material.id);
  const [first] = tiers;
  if (first !== undefined)
    sheet.workOut(
      `${id}.price`,
      buyer === null ? first.price : sheet.graph.later(averagePriceIdOf(buyer, material.id), unit),
      'Average of the tiers over what the route buys.',
    );
  const asked = sheet.input({
    id: `${id}.price`,
    label: follows ? 'Index that the price follows' : priceLabels[material.price.kind],
    where,
    unit,
    foreign,
    ...(sameBasis ? { figure: entry.price } : {}),
  });
  const discount = sheet.optional({
    id: `${id}.discount`,
    label: 'Discount from list',
    where,
    unit: '1',
    entry: '%',
    allowed: fraction,
  });
  const rebate = sheet.optional({ id: `${id}.rebate`, label: 'Rebate', where, unit, foreign, allowed: notNegative });
  const terms = termsOf(sheet, specs);
  const agreed = (price: Quantity): Quantity => {
    const listed = price.times(discount.complement());
    return follows ? contractPrice({ index: listed, ...terms }) : listed;
  };
  const named = follows
    ? sheet.define(`${id}.contractPrice`, 'Price by the formula', unit, agreed(asked), {
        where,
        foreign,
        note: 'Factor times index plus addition, at most the cap and at least the floor, before the rebate.',
      })
    : agreed(asked);
  return {
    net: sheet.define(`${id}.netPrice`, 'Net price', unit, named.minus(rebate), { where, foreign }),
    unit,
    tiers,
    netOf: (price) => agreed(price).minus(rebate),
  };
}

type FormulaSpecs = Readonly<Partial<Record<Exclude<keyof ContractTerms, 'index'>, InputSpec>>>;

/** Figures of a formula, for the kinds of price that can have one: each is there only where it is given. */
function formulaSpecs(material: Material, unit: string, foreign: boolean): FormulaSpecs {
  if (material.price.kind !== 'contract' && material.price.kind !== 'index') return {};
  const spec = (name: string, label: string, of: string): InputSpec => ({
    id: `material.${material.id}.formula.${name}`,
    label,
    where: material.label,
    unit: of,
    foreign: foreign && of === unit,
  });
  return {
    factor: spec('factor', 'Price formula: times the index', '1'),
    addition: spec('addition', 'Price formula: added to the index', unit),
    floor: spec('floor', 'Price formula: floor', unit),
    cap: spec('cap', 'Price formula: cap', unit),
  };
}

function termsOf(sheet: Sheet, specs: FormulaSpecs): Omit<ContractTerms, 'index'> {
  const given = Object.entries(specs).flatMap(([name, spec]) => (sheet.has(spec) ? [[name, sheet.input(spec)]] : []));
  return Object.fromEntries(given) as Omit<ContractTerms, 'index'>;
}
