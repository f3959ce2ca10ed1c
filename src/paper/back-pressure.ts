import type { Route } from '../case/case.ts';
import { type Quantity, constant } from '../kernel/expression/quantity.ts';
import type { Plant } from './plant.ts';
import type { InputSpec, Sheet } from './sheet.ts';

const ratioSpec: InputSpec = {
  id: 'boiler.powerToHeat',
  label: 'Power to heat of the back-pressure plant',
  unit: '1',
  allowed: { least: '0', most: '2' },
};

const joulesOfPower = constant('0.0036', 'GJ/kWh');

/** Whether the mill makes power from the steam on its way to the machine. */
export const hasBackPressure = (sheet: Sheet): boolean => sheet.has(ratioSpec);

/** Power lost per heat that the boiler need not raise, kWh/GJ; null where the route's heat passes no turbine of the mill. */
export function powerLostPerHeat(sheet: Sheet, route: Route): Quantity | null {
  if (route.heat !== 'own boiler' || !hasBackPressure(sheet)) return null;
  return sheet.input(ratioSpec).dividedBy(joulesOfPower);
}

export const lostPowerIdOf = (routeId: string): string => `${routeId}.electricity.backPressure`;

/**
 * Steam that passes a turbine on its way to the machine makes power. What the boiler need not raise, since residues or a pulp mill give it
 * or since the route needs less than the base route, makes none, and that power is bought: sigma x heat / 0.0036 GJ per kWh. A route that
 * needs more heat makes more. Null where the mill has no such plant. The fuel that this power takes is not counted.
 */
export function lostPower(
  sheet: Sheet,
  { route }: Plant,
  given: { readonly residues: Quantity; readonly ownMill: Quantity },
): Quantity | null {
  if (!hasBackPressure(sheet)) return null;
  const perHeat = powerLostPerHeat(sheet, route);
  const define = (name: string, label: string, unit: string, quantity: Quantity, note: string): Quantity =>
    sheet.define(`${route.id}.${name}`, label, unit, quantity, { where: route.label, note });
  const label = 'Electricity, less made in back pressure';
  if (perHeat === null)
    return define('electricity.backPressure', label, 'kWh/t', constant('0', 'kWh/t'), 'Its heat passes no turbine.');
  const displaced = define(
    'heat.displaced',
    'Heat that makes no power',
    'GJ/t',
    given.residues.plus(given.ownMill).plus(savedAgainstBase(sheet, route)),
    'Heat from residues and from an own pulp mill, and what the route needs less than the base route.',
  );
  return define(
    'electricity.backPressure',
    label,
    'kWh/t',
    displaced.times(perHeat),
    'Heat that makes no power times power to heat; below nothing where the route makes more. The fuel that this power takes is not counted.',
  );
}

/** Below nothing where the route needs more heat than the base route. */
function savedAgainstBase(sheet: Sheet, route: Route): Quantity {
  const base = sheet.case.routes.find(({ id }) => id === sheet.case.compare.base);
  if (base === undefined || base.id === route.id || base.heat !== 'own boiler') return constant('0', 'GJ/t');
  const needed = ({ id }: Route): Quantity => sheet.graph.later(`${id}.heat.total`, 'GJ/t');
  return sheet.define(
    `${route.id}.heat.savedAgainstBase`,
    'Heat needed less than by the base route',
    'GJ/t',
    needed(base).minus(needed(route)),
    {
      where: route.label,
    },
  );
}
