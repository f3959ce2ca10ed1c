import { type Quantity, constant, total } from '../../kernel/expression/quantity.ts';
import { components } from '../components.ts';
import { degradableCarbon, methaneOfCarbon } from '../footprint/landfill-methane.ts';
import { fossilIn } from '../footprint/sent-residues.ts';
import { mineral } from '../residue-heat.ts';
import type { Residue } from '../residue.ts';
import type { RouteModel } from '../route.ts';
import { keptBy } from './kept-by.ts';
import type { SharesOfYear } from './outlet-shares.ts';
import type { PlanSheet } from './plan-sheet.ts';

/** Groups of prices that the way of residues is paid at. */
export const outletGroups = ['waste', 'landfillTax', 'sales', 'heat'] as const;
type OutletGroup = (typeof outletGroups)[number];

/** What a route pays more than in its statement while its residues go elsewhere, at today's prices and per tonne of product. */
export interface OutletCost {
  readonly money: Readonly<Record<OutletGroup, Quantity>>;
  /** Fossil carbon under the price of carbon, kgCO2e/t. */
  readonly priced: Quantity;
}

/** What one stream pays, heats and leaves more than today. */
interface StreamCost {
  readonly charge: Quantity;
  readonly tax: Quantity;
  readonly sale: Quantity;
  /** GJ/t, and nothing where none of it is burned differently. */
  readonly heat: readonly Quantity[];
  readonly ash: readonly Quantity[];
  readonly fossil: readonly Quantity[];
  /** Degradable carbon in the mill's own landfill, where that is priced, tC/t. */
  readonly laid: readonly Quantity[];
}

/**
 * Fees, taxes, proceeds and heat are so much a wet tonne at each place, so that the difference of shares times that is exact. What is burned
 * leaves ash, which goes its own way; heat counts up to what the route needs, as in its statement. The water that the ash carries away is
 * left as it is. What stays the same from one year to the next is written once.
 */
export function outletCosts(
  sheet: PlanSheet,
  { plant, residues }: RouteModel,
): (sharesOf: (stream: string) => SharesOfYear | null) => OutletCost {
  const { sheet: model } = sheet;
  const { route } = plant;
  const perTonne = `${model.case.currency}/t`;
  const isBought = route.heat === 'bought heat';
  const price = model.graph.later(isBought ? 'price.heat' : 'price.usefulHeat', `${model.case.currency}/GJ`);
  const carbon = isBought ? constant('0', 'kgCO2e/GJ') : model.graph.later('carbon.usefulHeat', 'kgCO2e/GJ');
  const ofStream = keptBy((residue: Residue) => {
    const whole = wholeOf(sheet, route.id, residue);
    return keptBy((shares: SharesOfYear) => streamCost(sheet, residue, shares, whole));
  });
  const ashes = residues.find(({ stream }) => stream === 'ash');
  const others = residues.filter((residue) => residue !== ashes);
  return (sharesOf) => {
    const moved = others.flatMap((residue) => {
      const shares = sharesOf(residue.stream);
      return shares === null ? [] : [ofStream(residue)(shares)];
    });
    const ash = ashCost(sheet, ashes, sharesOf('ash'), moved);
    const paid = (term: 'charge' | 'tax' | 'sale'): Quantity =>
      total(
        [...moved, ...ash].map((each) => each[term]),
        perTonne,
      );
    const more = moved.flatMap((each) => each.heat);
    const heat = more.length === 0 ? constant('0', 'GJ/t') : moreHeat(sheet, route.id, residues, more);
    const laid = moved.flatMap((each) => each.laid);
    const methane = laid.length === 0 ? [] : [methaneOfCarbon(model, total(laid, 'tC/t'))];
    return {
      money: {
        waste: paid('charge'),
        landfillTax: paid('tax'),
        sales: minus(paid('sale')),
        heat: minus(heat.times(price)),
      },
      priced: total([...moved.flatMap((each) => each.fossil), minus(heat.times(carbon)), ...methane], 'kgCO2e/t'),
    };
  };
}

const minus = (quantity: Quantity): Quantity => constant('0', quantity.unit).minus(quantity);

/** What a stream would heat, leave and emit if all of it were burned, or laid in the own landfill: written when it is first asked for. */
function wholeOf({ sheet }: PlanSheet, routeId: string, residue: Residue) {
  const heat = (name: string): Quantity => sheet.graph.later(`${routeId}.residue.${residue.stream}.${name}`, 'GJ/t');
  return {
    heat: keptBy(({ terms: { efficiency } }: Residue['parts'][number]) =>
      heat('firedHeat').times(efficiency).minus(heat('supportHeat').times(efficiency.complement())),
    ),
    ash: keptBy(({ composition }: Residue) =>
      total(
        components.filter((each) => mineral.has(each)).map((each) => composition[each]),
        'bdt/t',
      ),
    ),
    fossil: keptBy((each: Residue) => fossilIn(sheet, each)),
    laid: keptBy(({ composition }: Residue) => degradableCarbon(sheet, composition)),
  };
}

function streamCost(
  { sheet }: PlanSheet,
  residue: Residue,
  shares: SharesOfYear,
  whole: ReturnType<typeof wholeOf>,
): StreamCost {
  const moved = residue.parts.map((part) => ({
    part,
    more: (shares.of.get(part.destination.id) ?? part.share).minus(part.share),
  }));
  const burned = moved.filter(({ part }) => part.destination.kind === 'own boiler');
  const own = moved.filter(
    ({ part: { destination } }) => destination.kind === 'landfill' && destination.owned === true,
  );
  const paid = (term: 'charge' | 'tax' | 'sale'): Quantity =>
    residue.wet.times(
      total(
        moved.map(({ part, more }) => more.times(part.terms[term])),
        `${sheet.case.currency}/wet-t`,
      ),
    );
  return {
    charge: paid('charge'),
    tax: paid('tax'),
    sale: paid('sale'),
    heat: burned.map(({ part, more }) => whole.heat(part).times(more)),
    ash: burned.map(({ more }) => whole.ash(residue).times(more)),
    fossil: burned.map(({ more }) => whole.fossil(residue).times(more)),
    laid: sheet.case.carbonPrice?.ownLandfill === true ? own.map(({ more }) => whole.laid(residue).times(more)) : [],
  };
}

/** The ash of a year, as much as there is then, less that of today. */
function ashCost(
  { sheet }: PlanSheet,
  ash: Residue | undefined,
  shares: SharesOfYear | null,
  moved: readonly StreamCost[],
): readonly Pick<StreamCost, 'charge' | 'tax' | 'sale'>[] {
  const more = moved.flatMap((each) => each.ash);
  if (ash === undefined || (shares === null && more.length === 0)) return [];
  const wet = ash.wet.plus(total(more, 'bdt/t').dividedBy(ash.dryness).times(constant('1', 'wet-t/bdt')));
  const paid = (term: 'charge' | 'tax' | 'sale'): Quantity => {
    const perWetTonne = (shareOf: (part: Residue['parts'][number]) => Quantity): Quantity =>
      total(
        ash.parts.map((part) => shareOf(part).times(part.terms[term])),
        `${sheet.case.currency}/wet-t`,
      );
    const now = perWetTonne(({ destination, share }) => shares?.of.get(destination.id) ?? share);
    return wet.times(now).minus(ash.wet.times(perWetTonne(({ share }) => share)));
  };
  return [{ charge: paid('charge'), tax: paid('tax'), sale: paid('sale') }];
}

/** Useful heat of what is burned besides, up to what the route needs. */
function moreHeat(
  { sheet }: PlanSheet,
  routeId: string,
  residues: readonly Residue[],
  more: readonly Quantity[],
): Quantity {
  const heat = (name: string): Quantity => sheet.graph.later(`${routeId}.${name}`, 'GJ/t');
  const today = residues
    .filter(({ parts }) => parts.some(({ destination }) => destination.kind === 'own boiler'))
    .map(({ stream }) => heat(`residue.${stream}.heat`));
  return total([...today, ...more], 'GJ/t')
    .lesserOf(heat('heat.total'))
    .minus(heat('heat.fromResidues'));
}
