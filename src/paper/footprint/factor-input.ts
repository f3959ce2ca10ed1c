import type { Quantity } from '../../kernel/expression/quantity.ts';
import type { CarbonBoundary, CarbonFigure } from '../carbon-factors.ts';
import type { Figure } from '../figure.ts';
import { type Sheet, notNegative } from '../sheet.ts';

/** An input that is a carbon factor: it brings its boundary, year and rules along, and a figure given for it must name its source. */
export function factorInput(sheet: Sheet, id: string, label: string, figure: CarbonFigure, where?: string): Quantity {
  return sheet.input({ id, label, where, unit: figure.unit, figure: withDetails(figure), allowed: notNegative });
}

/** The facts that decide whether a factor may stand beside another. */
export function withDetails(figure: CarbonFigure): Figure {
  const { year, boundary, biogenic, allocation, gwp } = figure;
  return { ...figure, details: { year, boundary, biogenic, allocation, gwp } };
}

/** A figure of the program's other lists as a carbon factor: no year and no set of warming potentials is known for it. */
export function asFactor(figure: Figure, boundary: CarbonBoundary): Figure {
  return { ...figure, details: { year: '', boundary, biogenic: 'out', allocation: 'none', gwp: 'none' } };
}
