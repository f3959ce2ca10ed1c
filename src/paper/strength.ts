import type { Route } from '../case/case.ts';
import { type Quantity, constant, total } from '../kernel/expression/quantity.ts';
import type { LineResult } from './line.ts';
import type { StageResult } from './stages/stage.ts';
import { type InputSpec, type Sheet, notNegative, positive } from './sheet.ts';
import {
  type StrengthProperty,
  gainIdOf,
  proposedServiceIdOf,
  referenceIndexIdOf,
  strengthFactorIdOf,
  strengthIndexIdOf,
  strengthProperties,
} from './strength-properties.ts';

/** Lets the machine take the factor that strength asks for, where the route says so. The factor is written down once its lines are known. */
export function serviceFromStrength(sheet: Sheet, route: Route): void {
  if (route.service !== 'from strength') return;
  const proposed = sheet.graph.later(proposedServiceIdOf(route.id), '1');
  sheet.workOut(`${route.id}.machine.serviceFactor`, proposed, 'What strength asks for, by choice of the case.');
}

/**
 * Strength to grammage. The index of the furnish is I = sum of P_i I_i + k_starch x starch + k_refining x net refining energy, P_i being shares
 * of the dry fresh stock. A sheet that must carry what the reference carries weighs I_ref / I of it, and the cube root of that for bending,
 * where stiffness goes with the cube of grammage. A property counts as soon as any line has an index of it; neither k has a default.
 */
export function strengthOf(sheet: Sheet, route: Route, lines: readonly LineResult[]): void {
  // In whatever order figures come, each has its place; they do nothing until a line has an index.
  for (const property of strengthProperties) {
    sheet.optional(referenceOf(property));
    sheet.optional(gainOf(property, 'perStarch'));
    sheet.optional(gainOf(property, 'perRefining'));
  }
  sheet.optional(starchOf(route));
  const known = strengthProperties.filter(({ id }) => lines.some((line) => sheet.isGiven(lineIndexIdOf(line, id))));
  const isRefined = known.some(({ id }) => sheet.isGiven(gainIdOf(id, 'perRefining')));
  const energy = isRefined ? refiningOf(sheet, route, lines) : constant('0', 'kWh/bdt');
  const factors = known.map((property) => factorOf(sheet, { route, lines, energy }, property));
  if (known.length === 0 && route.service !== 'from strength') return;
  if (known.length === 0) sheet.problems.push(lacking(route, lines));
  const [first = constant('1'), ...others] = factors;
  const largest = others.reduce((most, factor) => most.greaterOf(factor), first);
  sheet.define(proposedServiceIdOf(route.id), 'Tonnes for the same service, by strength', '1', largest, {
    where: route.label,
    note: 'The largest of what the properties of strength ask for.',
  });
}

interface Furnish {
  readonly route: Route;
  readonly lines: readonly LineResult[];
  /** Net refining energy of the stock, kWh/bdt. */
  readonly energy: Quantity;
}

function factorOf(sheet: Sheet, furnish: Furnish, property: StrengthProperty): Quantity {
  const { route, lines } = furnish;
  const where = route.label;
  const { id, label, unit } = property;
  const mixed = lines.map((line) => {
    const index = {
      id: lineIndexIdOf(line, id),
      label: `${label} of its stock, before starch and refining`,
      where: `${where}, ${line.label}`,
      unit,
      allowed: positive,
    };
    return shareOf(sheet, line).times(sheet.input(index));
  });
  const index = sheet.define(
    strengthIndexIdOf(route.id, id),
    `${label} of the furnish`,
    unit,
    total([...mixed, ...gains(sheet, furnish, property)], unit).within({ above: '0' }),
    { where, note: 'Index of each line times its share of the dry fresh stock, and what starch and refining add.' },
  );
  const ratio = sheet.input(referenceOf(property)).dividedBy(index);
  const isBending = id === 'bending';
  const factor = isBending ? ratio.toThePower(constant('1').dividedBy(constant('3'))) : ratio;
  return sheet.define(strengthFactorIdOf(route.id, id), `Tonnes for the same service, by ${name(label)}`, '1', factor, {
    where,
    note: isBending
      ? 'Cube root of the index of the reference over that of the furnish.'
      : 'Index of the reference over that of the furnish.',
  });
}

/** What starch and refining add to an index, where somebody says how much they do. */
function gains(sheet: Sheet, { route, energy }: Furnish, property: StrengthProperty): readonly Quantity[] {
  const [starch, refining] = [gainOf(property, 'perStarch'), gainOf(property, 'perRefining')];
  return [
    ...(sheet.has(starch) ? [sheet.input(starch).times(sheet.input(starchOf(route)))] : []),
    ...(sheet.has(refining) ? [sheet.input(refining).times(energy)] : []),
  ];
}

function referenceOf({ id, label, unit }: StrengthProperty): InputSpec {
  return {
    id: referenceIndexIdOf(id),
    label: `${label} at which the reference tonne serves`,
    unit,
    allowed: positive,
  };
}

function gainOf({ id, label, unit }: StrengthProperty, of: 'perStarch' | 'perRefining'): InputSpec {
  return of === 'perStarch'
    ? { id: gainIdOf(id, of), label: `${label} gained by a kilogram of starch a gross tonne`, unit: `${unit}*gt/kg` }
    : { id: gainIdOf(id, of), label: `${label} gained by net refining energy`, unit: `${unit}*bdt/kWh` };
}

function starchOf(route: Route): InputSpec {
  return {
    id: `${route.id}.quality.starch`,
    label: 'Starch that strengthens',
    where: route.label,
    unit: 'kg/gt',
    allowed: notNegative,
  };
}

/** Net energy of refiners whose net energy is known: the whole draw of a refiner does not say how much of it works on fibre. */
function refiningOf(sheet: Sheet, route: Route, lines: readonly LineResult[]): Quantity {
  const energies = lines.map((line) => {
    const net = line.stages
      .filter((stage) => isKnownNet(route, line, stage))
      .map((stage) => sheet.graph.later(`${stage.id}.net`, 'kWh/bdt').times(stage.feedMass));
    const perStock = total(net, 'kWh/bdt').dividedBy(sheet.graph.later(`${line.id}.yield`, '1'));
    return shareOf(sheet, line).times(perStock);
  });
  return sheet.define(
    `${route.id}.quality.refiningEnergy`,
    'Net refining energy of the stock',
    'kWh/bdt',
    total(energies, 'kWh/bdt'),
    {
      where: route.label,
      note: 'Net energy of the refiners over the stock they bring; refiners of which only the whole draw is known are left out.',
    },
  );
}

function isKnownNet(route: Route, line: LineResult, { id, kind }: StageResult): boolean {
  const own = route.lines.find((each) => `${route.id}.${each.id}` === line.id)?.stages ?? [];
  const stage = own.find((each) => `${line.id}.${each.id}` === id);
  return kind === 'refiner' && stage?.power === 'net and no-load';
}

function lacking(route: Route, lines: readonly LineResult[]) {
  const example = lines[0] === undefined ? '' : `, such as ${lineIndexIdOf(lines[0], 'tensile')}`;
  return { kind: 'missing', path: `an index of strength of the lines of ${route.label}${example}` } as const;
}

const shareOf = (sheet: Sheet, line: LineResult): Quantity => sheet.graph.later(`${line.id}.share`, '1');
const lineIndexIdOf = (line: LineResult, property: StrengthProperty['id']): string => `${line.id}.strength.${property}`;
const name = (label: string): string => label.charAt(0).toLowerCase() + label.slice(1);
