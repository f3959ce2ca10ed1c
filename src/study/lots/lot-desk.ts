import { type BlockedPlan, blockedPlan, laneCount, lanesOf, runBlock, varies } from '../../kernel/tape/blocked.ts';
import { compileTape } from '../../kernel/tape/compile.ts';
import { inputPlace, resultSlot } from '../../kernel/tape/tape.ts';
import { buildModel } from '../../paper/model.ts';
import type { OpenCase } from '../open-case.ts';
import { type SlotShape, caseWithLots, onlyRoute, slotId } from './lot-case.ts';
import type { LotLine } from './lot-line.ts';
import type { LotTerms } from './lot-terms.ts';
import { type LotPoint, slotFigures } from './slot-figures.ts';
import type { PriceSlope } from './walk-away.ts';

/** What a point of a lot comes to, per tonne of product unless it says otherwise. */
export interface LotValues {
  /** Cost by the price of the lot. */
  readonly slope: PriceSlope;
  /** Dry feed of the line, bdt. */
  readonly feed: number;
  /** Tonnes as received per dry tonne. */
  readonly received: number;
  /** kgCO2e. */
  readonly carbon: number;
  /** Stock of the line per dry feed. */
  readonly yield: number;
  /** Ash of the product, 0 to 1, and its macro-stickies, kg. */
  readonly ash: number;
  readonly macroStickies: number;
}

export interface AskedPoint {
  readonly terms: LotTerms;
  readonly point: LotPoint;
}

const moneyNames = ['cost', 'feed', 'payable', 'received'] as const;
const furtherNames = ['carbon', 'yield', 'ash', 'macroStickies'] as const;
type Name = (typeof moneyNames)[number] | (typeof furtherNames)[number];
/** What is asked of a point: its money alone, or everything. */
export type Asked = 'money' | 'everything';

interface ShapeDesk {
  readonly plans: Readonly<Record<Asked, BlockedPlan>>;
  readonly slots: Readonly<Record<Name, number>>;
  /** Place and factor of each input of the slot, by what stands behind "material.ID.". */
  readonly inputs: ReadonlyMap<string, { readonly place: number; readonly factor: number }>;
}

// The price at which points are worked out. It is above zero, so that the settlement is seen; how far does not matter.
const probe = 100;

/**
 * Works points of lots out on one tape for each shape of price: the model of the case with a lot in the place of the line's recipe, a lane
 * for each point. The models are built once for a case. Cost is straight in the price on each side of zero, its slope the payable tonnes
 * in a tonne of product, so that one lane tells the cost at all prices.
 */
export class LotDesk {
  readonly #open: OpenCase;
  readonly #place: LotLine;
  readonly #desks = new Map<string, ShapeDesk>();

  constructor(open: OpenCase, place: LotLine) {
    this.#open = open;
    this.#place = place;
  }

  /** Values of all points, in their order; what was not asked for is NaN. */
  work(points: readonly AskedPoint[], asked: Asked): readonly LotValues[] {
    const values: LotValues[] = new Array<LotValues>(points.length);
    const groups = new Map<string, number[]>();
    for (const [index, { terms }] of points.entries()) {
      const key = keyOf(shapeOf(terms));
      const group = groups.get(key);
      if (group === undefined) groups.set(key, [index]);
      else group.push(index);
    }
    for (const indexes of groups.values()) {
      const desk = this.#deskFor(shapeOf(points[indexes[0]!]!.terms));
      for (let from = 0; from < indexes.length; from += laneCount) {
        runPoints(desk, asked, indexes.slice(from, from + laneCount), points, values);
      }
    }
    return values;
  }

  #deskFor(shape: SlotShape): ShapeDesk {
    const known = this.#desks.get(keyOf(shape));
    if (known !== undefined) return known;
    const made = shapeDesk(this.#open, this.#place, shape);
    this.#desks.set(keyOf(shape), made);
    return made;
  }
}

export function shapeOf({ lot }: LotTerms): SlotShape {
  return { basis: lot.basis, settlement: lot.settlement === 'point for point' ? 'point for point' : 'dry basis' };
}

// Only where a price is per tonne as received does the way of settling make another model.
function keyOf({ basis, settlement }: SlotShape): string {
  return basis === 'as received' ? settlement : basis;
}

function runPoints(
  { plans, slots, inputs }: ShapeDesk,
  asked: Asked,
  block: readonly number[],
  points: readonly AskedPoint[],
  values: LotValues[],
): void {
  const plan = plans[asked];
  const lanes = new Map([...inputs].map(([what, { place }]) => [what, lanesOf(plan, place)]));
  for (const [lane, index] of block.entries()) {
    const { terms, point } = points[index]!;
    for (const [what, value] of slotFigures(terms, point, probe))
      lanes.get(what)![lane] = value * inputs.get(what)!.factor;
  }
  runBlock(plan, block.length);
  const read = (name: Name, lane: number): number => {
    const slot = slots[name];
    return (varies(plan, slot) ? lanesOf(plan, slot)[lane] : plan.base[slot]) ?? NaN;
  };
  const further = (name: Name, lane: number): number => (asked === 'everything' ? read(name, lane) : NaN);
  for (const [lane, index] of block.entries()) {
    const [feed, received] = [read('feed', lane), read('received', lane)];
    const above = feed * read('payable', lane);
    // A fee for paper that is priced as received is settled as weighed; the other bases pay for dry matter either way.
    const below = points[index]!.terms.lot.basis === 'as received' ? feed * received : above;
    values[index] = {
      slope: { atNothing: read('cost', lane) - probe * above, above, below },
      feed,
      received,
      carbon: further('carbon', lane),
      yield: further('yield', lane),
      ash: further('ash', lane),
      macroStickies: further('macroStickies', lane),
    };
  }
}

function shapeDesk({ content }: OpenCase, place: LotLine, shape: SlotShape): ShapeDesk {
  const id = slotId(content, 'offered');
  const figures = new Map(slotInputs(shape).map((what) => [what, 0]));
  const lot = { id, label: 'Lot', shape, figures, share: 100 };
  const route = place.route.id;
  const { graph } = buildModel(onlyRoute(caseWithLots(content, place, [lot]), route));
  const ids: Readonly<Record<Name, string>> = {
    cost: `${route}.cost.total`,
    feed: `${route}.${place.line.id}.feed`,
    payable: `material.${id}.payable`,
    received: `material.${id}.received`,
    carbon: `${route}.footprint.total`,
    yield: `${route}.${place.line.id}.yield`,
    ash: `${route}.productAsh`,
    macroStickies: `${route}.product.macroStickies`,
  };
  const tape = compileTape(graph, Object.values(ids));
  const inputs = new Map(
    slotInputs(shape).map((what) => {
      const at = inputPlace(tape, `material.${id}.${what}`);
      return [what, { place: at, factor: tape.inputFactors[at]! }];
    }),
  );
  const slots = Object.fromEntries(Object.entries(ids).map(([name, result]) => [name, resultSlot(tape, result)]));
  const varied = [...inputs.values()].map(({ place: at }) => at);
  const planFor = (names: readonly Name[]): BlockedPlan =>
    blockedPlan(tape, varied, [...new Set(names.map((name) => slots[name]!))]);
  return {
    plans: { money: planFor(moneyNames), everything: planFor([...moneyNames, ...furtherNames]) },
    slots: slots as Record<Name, number>,
    inputs,
  };
}

const always = ['lights', 'heavies', 'wire', 'wetStrength', 'ash'] as const;

/** Every input that the material of a lot has, by what stands behind "material.ID.". */
function slotInputs({ basis }: SlotShape): readonly string[] {
  const contents = ['fines', 'inkSmall', 'inkMid', 'inkLarge', 'macroStickies', 'microStickies', 'dissolved'];
  const settled = basis === 'as received' ? ['moistureLimit', 'moistureTolerance', 'unusableLimit'] : [];
  return [
    ...contents,
    ...always,
    ...always.map((kind) => `found.${kind}`),
    'moisture',
    'price',
    'freight',
    'handling',
    'distance',
    ...settled,
  ];
}
