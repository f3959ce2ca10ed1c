import type { Lot } from '../../case/lots.ts';
import type { Graph } from '../../kernel/graph/graph.ts';
import { inForce } from '../../kernel/graph/input-declaration.ts';
import { materialEntries } from '../../paper/catalogue.ts';
import { type Component, components } from '../../paper/components.ts';
import { type Unwanted, unwanted } from '../../paper/materials/composition.ts';
import { type PaperGrade, paperGrades } from '../../paper/materials/en-643.ts';
import type { OpenCase } from '../open-case.ts';
import { contractPrice, creditLeft } from './lot-money.ts';
import { lotFreight } from './lot-freight.ts';
import type { LotLine } from './lot-line.ts';
import type { LotNote } from './lot-note.ts';
import { type Excess, excessOver, isOver } from './tolerance.ts';
import { type Reading, readingOf, usualReading } from './reading.ts';

/** What a lot comes to in numbers, with what is usual in the place of what nobody said. Shares are in per cent. */
export interface LotTerms {
  readonly lot: Lot;
  readonly grade: PaperGrade | null;
  /** Tonnes weighed; NaN where nobody said. */
  readonly tonnes: number;
  /** Price asked, after the formula of a contract; NaN where there is none. */
  readonly asked: number;
  /** Price that the lot is taken at: that of the lower grade, where it is downgraded for what is above the tolerance. */
  readonly charged: number;
  readonly excess: Excess;
  /** What is left of a payment that is made later. */
  readonly creditLeft: number;
  readonly moisture: Reading;
  readonly unusable: Reading;
  /** Unusable material by kind, at its mean. */
  readonly kinds: Readonly<Record<Unwanted, number>>;
  /** Ash of the dry mass; null where it was not measured. */
  readonly ash: number | null;
  /** What the grade usually holds. */
  readonly usual: Readonly<Record<Component, number>>;
  /** Money per tonne as received, without handling. */
  readonly freight: number;
  /** The part of it that a kilometre costs; 0 where distance has no price. */
  readonly freightPerKilometre: number;
  readonly handling: number;
  readonly distance: number;
  readonly moistureLimit: number;
  readonly moistureTolerance: number;
  /** Unusable material that is paid for in full; 100 where nothing was agreed. */
  readonly unusableLimit: number;
  readonly notes: readonly LotNote[];
}

/** Reads a lot for the line it would feed. */
export function lotTerms(open: OpenCase, place: LotLine, lot: Lot): LotTerms {
  const notes: LotNote[] = [];
  const figureOf = (what: string): number => figureInForce(open, `material.${place.material}.${what}`);
  const figure = (name: keyof Lot['figures']): number => Number(lot.figures[name] ?? NaN);
  const grade = lot.grade === undefined ? null : (paperGrades.get(lot.grade) ?? null);
  if (lot.grade !== undefined && grade === null) notes.push({ kind: 'unknown grade', code: lot.grade });
  const usual = usualContents(open, place, grade);
  const unusable = unusableOf(lot, usual);
  if (!unusable.isGiven) notes.push({ kind: 'usual contents' });
  const moisture =
    lot.moisture === undefined ? usualReading(figureOf('moisture')) : readingOf(lot.moisture.map(Number));
  if (!moisture.isGiven) notes.push({ kind: 'usual moisture', moisture: moisture.mean });
  if (moisture.count === 1) notes.push({ kind: 'single reading' });
  const freight = lotFreight(lot, figureOf('freight'), notes);
  const kinds = kindsOf(lot, unusable.mean, usual);
  const excess = excessOver(grade, kinds);
  const asked = askedPrice(lot, notes);
  const days = Number(lot.figures.paymentDays ?? 0);
  const agreed = figure('unusableLimit');
  return {
    lot,
    grade,
    tonnes: figure('tonnes'),
    asked,
    charged: isOver(excess) ? chargedPrice(lot, asked, notes) : asked,
    excess,
    creditLeft: creditLeft(Number(open.content.lots?.creditRate ?? 0) / 100, days),
    moisture,
    unusable,
    kinds,
    ash: lot.figures.ash === undefined ? null : Number(lot.figures.ash),
    usual,
    freight,
    freightPerKilometre: lot.delivery === 'ex works by distance' ? figure('freightRate') : 0,
    handling: figureOf('handling'),
    distance: Number(lot.figures.distance ?? figureOf('distance')),
    moistureLimit:
      lot.settlement === 'as weighed' ? 100 : agreedOr(figure('moistureLimit'), figureOf('moistureLimit'), 10),
    moistureTolerance:
      lot.settlement === 'as weighed' ? 0 : agreedOr(figure('moistureTolerance'), figureOf('moistureTolerance'), 0),
    unusableLimit:
      lot.remedy === 'claim' ? agreedOr(agreed, Number(grade?.unwanted ?? NaN), 100) : agreedOr(agreed, 100),
    notes,
  };
}

/** The first of them that is a number. */
function agreedOr(...values: readonly number[]): number {
  return values.find((value) => !Number.isNaN(value)) ?? NaN;
}

const figures = new WeakMap<Graph, ReadonlyMap<string, number>>();

function figureInForce({ model: { graph } }: OpenCase, id: string): number {
  const known = figures.get(graph) ?? new Map(graph.inputs.map((input) => [input.id, Number(inForce(input) ?? NaN)]));
  figures.set(graph, known);
  return known.get(id) ?? NaN;
}

/** The paper of the line as the case has it, or, for another kind of paper, as the program's list has it. */
function usualContents(open: OpenCase, place: LotLine, grade: PaperGrade | null): Record<Component, number> {
  const material = open.content.materials.find(({ id }) => id === place.material);
  const entry = grade === null || grade.like === material?.like ? undefined : materialEntries.get(grade.like);
  const of = (component: Component): number =>
    entry === undefined
      ? figureInForce(open, `material.${place.material}.${component}`) || 0
      : Number(entry.composition[component]?.value ?? 0);
  return Object.fromEntries(components.map((component) => [component, of(component)])) as Record<Component, number>;
}

function unusableOf(lot: Lot, usual: Readonly<Record<Component, number>>): Reading {
  if (lot.unusable !== undefined) return readingOf(lot.unusable.map(Number));
  const named = unwanted.filter((kind) => lot.figures[kind] !== undefined);
  if (named.length === 0) return usualReading(unwanted.reduce((sum, kind) => sum + usual[kind], 0));
  return readingOf([named.reduce((sum, kind) => sum + Number(lot.figures[kind]), 0)]);
}

/**
 * A total by kind: in the proportions of the kinds that were found, else in those of the grade. Where neither says anything, it is taken for
 * sand, glass and metal, which every line removes first.
 */
export function kindsOf(
  lot: Lot,
  unusable: number,
  usual: Readonly<Record<Component, number>>,
): Readonly<Record<Unwanted, number>> {
  const isNamed = unwanted.some((kind) => lot.figures[kind] !== undefined);
  const weights = unwanted.map((kind) => (isNamed ? Number(lot.figures[kind] ?? 0) : usual[kind]));
  const sum = weights.reduce((all, weight) => all + weight, 0);
  const share = (place: number): number =>
    sum > 0 ? (weights[place] ?? 0) / sum : unwanted[place] === 'heavies' ? 1 : 0;
  return Object.fromEntries(unwanted.map((kind, place) => [kind, unusable * share(place)])) as Record<Unwanted, number>;
}

function chargedPrice({ figures, remedy }: Lot, asked: number, notes: LotNote[]): number {
  if (remedy !== 'downgrade') return asked;
  if (figures.downgradePrice === undefined) notes.push({ kind: 'lacks', figure: 'downgradePrice' });
  return Number(figures.downgradePrice ?? NaN);
}

function askedPrice({ figures }: Lot, notes: LotNote[]): number {
  const of = (value: string | undefined, otherwise: number): number =>
    value === undefined ? otherwise : Number(value);
  if (figures.index !== undefined)
    return contractPrice({
      index: Number(figures.index),
      slope: of(figures.slope, 1),
      constant: of(figures.constant, 0),
      floor: of(figures.floor, -Infinity),
      cap: of(figures.cap, Infinity),
      rebate: of(figures.rebate, 0),
    });
  if (figures.price === undefined) notes.push({ kind: 'lacks', figure: 'price' });
  return of(figures.price, NaN);
}
