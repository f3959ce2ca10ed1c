import { components } from '../../paper/components.ts';
import { type Unwanted, unwanted } from '../../paper/materials/composition.ts';
import { type LotTerms, kindsOf } from './lot-terms.ts';

/** The moisture and the contents of a lot: as they were read, or as they might be. Shares in per cent. */
export interface LotPoint {
  readonly moisture: number;
  readonly kinds: Readonly<Record<Unwanted, number>>;
}

/** The lot as it was read. */
export function pointOf(terms: LotTerms, other: Partial<LotPoint> = {}): LotPoint {
  return { moisture: terms.moisture.mean, kinds: terms.kinds, ...other };
}

export function kindsAt({ lot, usual }: LotTerms, unusable: number): Readonly<Record<Unwanted, number>> {
  return kindsOf(lot, unusable, usual);
}

/** Figures of the inputs that a bought material has, by what stands behind "material.ID.", in their entry units. */
export function slotFigures(terms: LotTerms, point: LotPoint, price: number): ReadonlyMap<string, number> {
  const { usual } = terms;
  const held = unwanted.reduce((sum, kind) => sum + point.kinds[kind], 0);
  const usuallyHeld = unwanted.reduce((sum, kind) => sum + usual[kind], 0);
  // The ash of the grade stands in its paper, so that it shrinks as what is no paper grows.
  const ash = terms.ash ?? (usual.ash * (100 - held)) / (100 - usuallyHeld);
  const figures = new Map<string, number>();
  for (const component of components) if (component !== 'fibre') figures.set(component, usual[component]);
  for (const kind of unwanted) figures.set(`found.${kind}`, point.kinds[kind]);
  figures.set('found.ash', ash);
  figures.set('moisture', point.moisture);
  figures.set('price', price);
  figures.set('freight', terms.freight);
  figures.set('handling', terms.handling);
  figures.set('distance', terms.distance);
  if (terms.lot.basis !== 'as received') return figures;
  figures.set('moistureLimit', terms.moistureLimit);
  figures.set('moistureTolerance', terms.moistureTolerance);
  figures.set('unusableLimit', terms.unusableLimit);
  return figures;
}
