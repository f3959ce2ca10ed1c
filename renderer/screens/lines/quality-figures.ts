import { gainIdOf, type InputView, referenceIndexIdOf, strengthProperties } from '../../../src/index.ts';
import type { RouteOutline } from '../../engine/route-outline.ts';
import type { MissingFigure } from '../../fields/blank-input.ts';

type Inputs = Readonly<Record<string, InputView>>;

/** Figures of quality that a route can have: brightness and strength of its lines, and what strength is measured against. */
function possibleFigures({ id: route, lines }: RouteOutline): readonly MissingFigure[] {
  const ofLine = lines.flatMap(({ id, label }): MissingFigure[] => [
    { id: `${route}.${id}.brightness`, label: `${label}: brightness`, unit: '%' },
    ...strengthProperties.map((property) => ({
      id: `${route}.${id}.strength.${property.id}`,
      label: `${label}: ${lower(property.label)}`,
      unit: property.unit,
    })),
  ]);
  const ofProduct = strengthProperties.flatMap(({ id, label, unit }): MissingFigure[] => [
    { id: referenceIndexIdOf(id), label: `${label} of the reference tonne`, unit },
    { id: gainIdOf(id, 'perStarch'), label: `${label} a kilogram of starch adds`, unit: `${unit}*gt/kg` },
    { id: gainIdOf(id, 'perRefining'), label: `${label} net refining adds`, unit: `${unit}*bdt/kWh` },
  ]);
  const ofRoute = [
    { id: `${route}.quality.starch`, label: 'Starch that strengthens', unit: 'kg/gt' },
    { id: `${route}.limit.brightness`, label: 'Brightness, at least', unit: '%' },
  ];
  return [...ofLine, ...ofRoute, ...ofProduct];
}

export function missingQualities(route: RouteOutline, inputs: Inputs): readonly MissingFigure[] {
  return possibleFigures(route).filter(({ id }) => !Object.hasOwn(inputs, id));
}

export function givenQualities(route: RouteOutline, inputs: Inputs): readonly InputView[] {
  return possibleFigures(route).flatMap(({ id, label }) => {
    const input = Object.hasOwn(inputs, id) ? inputs[id] : undefined;
    return input === undefined ? [] : [{ ...input, label }];
  });
}

const lower = (label: string): string => label.charAt(0).toLowerCase() + label.slice(1);
