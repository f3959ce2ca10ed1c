import type { Quantity } from '../../kernel/expression/quantity.ts';
import { type Component, componentLabels, followsWater } from '../components.ts';
import { type Figure, plainFigure } from '../figure.ts';
import type { Sheet } from '../sheet.ts';
import type { StagePlace } from './stage-place.ts';

/** Exponents have no reference row: what passes with the water has 1, what a slot holds back is near 0, fibre lies between. */
export function exponentOf(sheet: Sheet, place: StagePlace, component: Component): Quantity {
  const figure = usualExponent(component);
  return sheet.input({
    id: `${place.id}.exponent.${component}`,
    label: `${componentLabels[component]}: plug-flow exponent`,
    where: place.where,
    unit: '1',
    figure,
    allowed: { least: '0', most: '1' },
  });
}

/** What is larger or denser than fibre, and so is held back by a slot or thrown out by a cone. */
const heldBack: ReadonlySet<Component> = new Set(['macroStickies', 'lights', 'heavies', 'wire', 'wetStrength']);

function usualExponent(component: Component): Figure {
  if (followsWater.has(component)) return plainFigure('1', '0.9', '1', '1');
  return heldBack.has(component) ? plainFigure('0.1', '0', '0.3', '1') : plainFigure('0.75', '0.1', '0.9', '1');
}
