import type { Route } from '../case/case.ts';
import type { Quantity } from '../kernel/expression/quantity.ts';
import type { Plant } from './plant.ts';
import { type OwnMillEnergy, ownMillSpecs } from './own-pulp-mill.ts';
import type { Sheet } from './sheet.ts';

/** What a route buys of electricity stands by itself only where a pulp mill of its own brings some; else it buys all that it needs. */
function boughtPowerIdOf(sheet: Sheet, route: Route): string {
  const isBrought = ownMillSpecs(sheet, route).some(({ power }) => sheet.isGiven(power.id));
  return `${route.id}.electricity.${isBrought ? 'bought' : 'total'}`;
}

/** Electricity that a route buys, kWh/t: what is priced and what the grid's carbon is counted on. */
export function boughtPower(sheet: Sheet, routeId: string): Quantity {
  const route = sheet.case.routes.find(({ id }) => id === routeId);
  if (route === undefined) throw new Error(`No route "${routeId}"`);
  return sheet.graph.later(boughtPowerIdOf(sheet, route), 'kWh/t');
}

/** Needed less what the own pulp mill hands over, where it does. */
export function writeBoughtPower(sheet: Sheet, { route }: Plant, { power }: OwnMillEnergy): void {
  const [id, needed] = [boughtPowerIdOf(sheet, route), `${route.id}.electricity.total`];
  if (id === needed) return;
  sheet.define(id, 'Electricity bought', 'kWh/t', sheet.graph.later(needed, 'kWh/t').minus(power), {
    where: route.label,
    note: 'Electricity needed less what comes from the own pulp mill.',
  });
}
