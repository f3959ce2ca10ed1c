import { type Quantity, constant, total } from '../../kernel/expression/quantity.ts';
import { components } from '../components.ts';
import { degradableCarbon, methaneOfCarbon } from '../footprint/landfill-methane.ts';
import { fossilIn } from '../footprint/sent-residues.ts';
import { mineral } from '../residue-heat.ts';
import type { Residue } from '../residue.ts';
import type { RouteModel } from '../route.ts';
import type { SharesOfYear } from './outlet-shares.ts';
import type { PlanSheet } from './plan-sheet.ts';

/** Groups of prices that the way of residues is paid at. */
export const outletGroups = ['waste', 'landfillTax', 'sales', 'heat'] as const;
export type OutletGroup = (typeof outletGroups)[number];

/** What a route pays more than in its statement while its residues go elsewhere, at today's prices and per tonne of product. */
export interface OutletCost {
  readonly money: Readonly<Record<OutletGroup, Quantity>>;
  /** Fossil carbon under the price of carbon, kgCO2e/t. */
  readonly priced: Quantity;
}

/** A part of a stream: how much of its share is more than today, and how many wet tonnes, both below nothing where it is less. */
interface Moved {
  readonly residue: Residue;
  readonly part: Residue['parts'][number];
  readonly share: Quantity;
  readonly wet: Quantity;
}

/**
 * Fees, taxes, proceeds and heat are so much a wet tonne at each place, so that the difference of shares times that is exact. What is burned
 * leaves ash, which goes its own way; heat counts up to what the route needs, as in its statement. The water that the ash carries away is
 * left as it is.
 */
export function outletCost(
  sheet: PlanSheet,
  { plant, residues }: RouteModel,
  sharesOf: (stream: string) => SharesOfYear | null,
): OutletCost {
  const { sheet: model } = sheet;
  const { route } = plant;
  const perTonne = `${model.case.currency}/t`;
  const moved = residues.flatMap((residue) =>
    residue.stream === 'ash' ? [] : movedOf(residue, sharesOf(residue.stream)),
  );
  const burned = moved.filter(({ part }) => part.destination.kind === 'own boiler');
  const moreAsh = total(
    burned.map(({ residue, share }) =>
      total(
        components.filter((each) => mineral.has(each)).map((each) => residue.composition[each]),
        'bdt/t',
      ).times(share),
    ),
    'bdt/t',
  );
  const all = [
    ...moved,
    ...residues.flatMap((residue) =>
      residue.stream === 'ash'
        ? movedOf(residue, sharesOf('ash'), moreAsh.dividedBy(residue.dryness).times(constant('1', 'wet-t/bdt')))
        : [],
    ),
  ];
  const paid = (term: 'charge' | 'tax' | 'sale'): Quantity =>
    total(
      all.map(({ part, wet }) => wet.times(part.terms[term])),
      perTonne,
    );
  const heat = burned.length === 0 ? constant('0', 'GJ/t') : moreHeat(sheet, route.id, residues, burned);
  const [price, carbon] =
    route.heat === 'bought heat'
      ? [model.graph.later('price.heat', `${model.case.currency}/GJ`), constant('0', 'kgCO2e/GJ')]
      : [
          model.graph.later('price.usefulHeat', `${model.case.currency}/GJ`),
          model.graph.later('carbon.usefulHeat', 'kgCO2e/GJ'),
        ];
  const minus = (quantity: Quantity): Quantity => constant('0', quantity.unit).minus(quantity);
  const fossil = burned.map(({ residue, share }) => fossilIn(model, residue).times(share));
  return {
    money: {
      waste: paid('charge'),
      landfillTax: paid('tax'),
      sales: minus(paid('sale')),
      heat: minus(heat.times(price)),
    },
    priced: total([...fossil, minus(heat.times(carbon)), ...ownMethane(sheet, moved)], 'kgCO2e/t'),
  };
}

function movedOf(residue: Residue, now: SharesOfYear | null, more: Quantity | null = null): readonly Moved[] {
  if (now === null && (more === null || more.operation.op === 'constant')) return [];
  return residue.parts.map((part) => {
    const ofYear = now?.of.get(part.destination.id) ?? part.share;
    const share = ofYear.minus(part.share);
    const besides = more === null ? null : more.times(ofYear);
    return {
      residue,
      part,
      share,
      wet: besides === null ? residue.wet.times(share) : residue.wet.times(share).plus(besides),
    };
  });
}

/** Useful heat of what is burned besides, up to what the route needs. */
function moreHeat(
  { sheet }: PlanSheet,
  routeId: string,
  residues: readonly Residue[],
  burned: readonly Moved[],
): Quantity {
  const heat = (name: string): Quantity => sheet.graph.later(`${routeId}.${name}`, 'GJ/t');
  const today = residues
    .filter(({ parts }) => parts.some(({ destination }) => destination.kind === 'own boiler'))
    .map(({ stream }) => heat(`residue.${stream}.heat`));
  const more = burned.map(({ residue: { stream }, part: { terms }, share }) =>
    heat(`residue.${stream}.firedHeat`)
      .times(terms.efficiency)
      .minus(heat(`residue.${stream}.supportHeat`).times(terms.efficiency.complement()))
      .times(share),
  );
  return total([...today, ...more], 'GJ/t')
    .lesserOf(heat('heat.total'))
    .minus(heat('heat.fromResidues'));
}

/** Methane of the mill's own landfill, where the case puts it under the price of carbon. */
function ownMethane({ sheet }: PlanSheet, moved: readonly Moved[]): readonly Quantity[] {
  const laid = moved.filter(
    ({ part: { destination } }) => destination.kind === 'landfill' && destination.owned === true,
  );
  if (sheet.case.carbonPrice?.ownLandfill !== true || laid.length === 0) return [];
  const carbon = laid.map(({ residue, share }) => degradableCarbon(sheet, residue.composition).times(share));
  return [methaneOfCarbon(sheet, total(carbon, 'tC/t'))];
}
