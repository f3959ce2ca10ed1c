import { type Quantity, total } from '../../kernel/expression/quantity.ts';
import { powerLostPerHeat } from '../back-pressure.ts';
import { carbonFactor } from '../carbon-factors.ts';
import type { Plant } from '../plant.ts';
import type { Residue } from '../residue.ts';
import type { Sheet } from '../sheet.ts';
import { factorInput } from './factor-input.ts';
import { methaneOf } from './landfill-methane.ts';
import { burningTail, fossilBurned, haulage, sentOf, sentTo, spreading } from './sent-residues.ts';

export const streamCostIdOf = (routeId: string, stream: string): string => `${routeId}.residue.${stream}.wayCost`;
export const streamCarbonIdOf = (routeId: string, stream: string): string => `${routeId}.residue.${stream}.wayCarbon`;

/**
 * What the way of each stream costs and what it emits, so that another way can be weighed against it. Ash that is left of what is
 * burned is a stream of its own, and the price of carbon stands in the statement alone.
 */
export function residueChoices(
  sheet: Sheet,
  plant: Plant,
  streams: readonly Residue[],
  prices: { readonly heat: Quantity; readonly electricity: Quantity },
): void {
  const { route } = plant;
  const lost = powerLostPerHeat(sheet, route);
  const worth = lost === null ? prices.heat : prices.heat.minus(lost.times(prices.electricity));
  for (const residue of streams) {
    const { stream, label, parts } = residue;
    const isBurned = parts.some(({ destination }) => destination.kind === 'own boiler');
    const heat = isBurned ? sheet.graph.later(`${route.id}.residue.${stream}.heat`, 'GJ/t') : null;
    const sold = total(
      parts.map((part) => part.wet.times(part.terms.sale)),
      `${sheet.case.currency}/t`,
    );
    const paid = residue.cost.plus(residue.tax).minus(sold);
    sheet.define(
      streamCostIdOf(route.id, stream),
      `${label}, cost of its way`,
      'EUR/t',
      heat === null ? paid : paid.minus(heat.times(worth)),
      {
        where: route.label,
        note: 'Haulage, gate fee and tax, less what is sold and the fuel that its heat spares.',
      },
    );
    const out = emitted(sheet, residue);
    sheet.define(
      streamCarbonIdOf(route.id, stream),
      `${label}, carbon of its way`,
      'kgCO2e/t',
      heat === null ? out : out.minus(spared(sheet, plant, heat)),
      {
        where: route.label,
        note: 'Methane, burning, spreading and haulage, less the fuel that its heat spares, with the supply of that fuel.',
      },
    );
  }
}

function emitted(sheet: Sheet, residue: Residue): Quantity {
  const sent = sentOf([residue]);
  const burned = sentTo(sent, 'incineration', 'own boiler');
  const parts = [
    methaneOf(sheet, [residue]),
    fossilBurned(sheet, burned),
    burningTail(sheet, burned),
    spreading(sheet, sent),
    haulage(sheet, sent),
  ];
  return total(parts, 'kgCO2e/t');
}

/** Carbon of the heat that residues take the place of, kgCO2e/t: fuel and its supply, less that of power lost with it, or heat bought. */
function spared(sheet: Sheet, { route }: Plant, heat: Quantity): Quantity {
  if (route.heat === 'bought heat')
    return heat.times(factorInput(sheet, 'carbon.boughtHeat', 'Bought heat', carbonFactor('heat.bought')));
  const ofFuel = total(
    [sheet.graph.later('carbon.fuel', 'kgCO2e/GJ'), sheet.graph.later('carbon.fuelUpstream', 'kgCO2e/GJ')],
    'kgCO2e/GJ',
  );
  const fuel = heat.dividedBy(sheet.graph.later('boiler.efficiency', '1')).times(ofFuel);
  const lost = powerLostPerHeat(sheet, route);
  if (lost === null) return fuel;
  const ofPower = total(
    [sheet.graph.later('carbon.grid', 'kgCO2e/kWh'), sheet.graph.later('carbon.gridUpstream', 'kgCO2e/kWh')],
    'kgCO2e/kWh',
  );
  return fuel.minus(heat.times(lost).times(ofPower));
}
