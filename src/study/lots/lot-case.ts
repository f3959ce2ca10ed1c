import type { Case, GivenInput, Material, PriceBasis } from '../../case/case.ts';
import { buildModel } from '../../paper/model.ts';
import { priceUnit } from './lot-entries.ts';
import type { LotLine } from './lot-line.ts';

/** What a lot's price says of the shape of a model; a price as weighed is one whose agreed moisture is never exceeded. */
export interface SlotShape {
  readonly basis: PriceBasis;
  readonly settlement: 'dry basis' | 'point for point';
}

/** One lot of a recipe: a material of its own, with figures in the entry units of its inputs, by what stands behind "material.ID.". */
export interface SlotLot {
  readonly id: string;
  readonly label: string;
  readonly shape: SlotShape;
  readonly figures: ReadonlyMap<string, number>;
  /** Share of the dry feed, per cent; of the first it is what the others leave. */
  readonly share: number;
}

/**
 * The case with lots in the place of the recipe of a line: every equation of the case then reckons with them. What-ifs do not come along.
 */
export function caseWithLots(content: Case, { route, line, material }: LotLine, lots: readonly SlotLot[]): Case {
  const {
    lots: _lots,
    ranges: _ranges,
    limits: _limits,
    scenarios: _scenarios,
    uncertainty: _spread,
    ...rest
  } = content;
  const origin = content.materials.find(({ id }) => id === material)?.origin ?? 'post-consumer';
  const shares = `${route.id}.${line.id}.grade.`;
  const inputs: [string, GivenInput][] = Object.entries(content.inputs).filter(([id]) => !id.startsWith(shares));
  for (const [place, lot] of lots.entries()) {
    const source = `Lot: ${lot.label}`;
    for (const [what, value] of lot.figures) {
      const id = `material.${lot.id}.${what}`;
      inputs.push([id, { value: digitsOf(value), unit: unitOf(content.currency, what, lot.shape.basis), source }]);
    }
    if (place > 0) inputs.push([`${shares}${lot.id}.share`, { value: digitsOf(lot.share), unit: '%', source }]);
  }
  return {
    ...rest,
    materials: [...content.materials, ...lots.map((lot) => bought(lot, origin))],
    routes: content.routes.map((each) =>
      each.id !== route.id
        ? each
        : {
            ...each,
            lines: each.lines.map((one) =>
              one.id === line.id ? { ...one, recipe: lots.map(({ id }) => ({ material: id })) } : one,
            ),
          },
    ),
    inputs: Object.fromEntries(inputs),
  };
}

/**
 * The case with one route only, which is held against itself: for what is asked of that route alone, a model of a fraction of the size. Whether
 * there is a plan of investment still counts, for then no capital is charged.
 */
export function onlyRoute(content: Case, route: string): Case {
  return {
    ...content,
    routes: content.routes.filter(({ id }) => id === route),
    compare: { base: route, with: route },
  };
}

/** A name for a lot's material that no material of the case bears. */
export function slotId(content: Case, wanted: string): string {
  const taken = new Set(content.materials.map(({ id }) => id));
  const stem = `lot-${wanted}`.slice(0, 36);
  let id = stem;
  for (let count = 2; taken.has(id); count += 1) id = `${stem}-${String(count)}`;
  return id;
}

function bought({ id, label, shape }: SlotLot, origin: Material['origin']): Material {
  return { id, label, origin, price: { basis: shape.basis, kind: 'net' }, settlement: shape.settlement };
}

/** The case without figures that nothing asks for any more. */
export function withoutUnasked(content: Case): Case {
  const unasked = new Set(
    buildModel(content).problems.flatMap((problem) => (problem.kind === 'unknown input' ? [problem.id] : [])),
  );
  const inputs = Object.fromEntries(Object.entries(content.inputs).filter(([id]) => !unasked.has(id)));
  return { ...content, inputs };
}

function unitOf(currency: string, what: string, basis: PriceBasis): string {
  if (what === 'price') return priceUnit(currency, basis);
  if (what === 'freight' || what === 'handling') return `${currency}/t-ar`;
  return what === 'distance' ? 'km' : '%';
}

// Fifteen digits are all that a floating-point number surely holds; what was typed has fewer and comes back as it was.
function digitsOf(value: number): string {
  return Number.isFinite(value) ? String(Number(value.toPrecision(15))) : '0';
}
