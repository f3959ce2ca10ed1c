import { explain, kindOfLines, lineBalance, type OpenCase } from '../../src/index.ts';

type Content = OpenCase['content'];
type Route = Content['routes'][number];
type Line = Route['lines'][number];

/** A share that is either typed or what the others leave, as a fraction. */
export interface Share {
  readonly id: string;
  readonly value: number;
  /** Whether it is what the others leave. */
  readonly isRest: boolean;
}

export interface GradeOutline {
  readonly material: string;
  readonly label: string;
  readonly share: Share;
}

export interface LineOutline {
  readonly id: string;
  readonly label: string;
  readonly stages: Line['stages'];
  readonly grades: readonly GradeOutline[];
  /** Of the stock of the route. */
  readonly share: Share;
  /** What its stages are, in words. */
  readonly train: readonly { readonly label: string; readonly kind: string }[];
  readonly yield: number;
  /** kWh per bone-dry tonne fed. */
  readonly electricity: number;
}

/** What there is in one route, without what it is worth. */
export interface RouteOutline {
  readonly id: string;
  readonly label: string;
  /** A route with any recovered line is a recovered one. */
  readonly kind: 'virgin' | 'recovered';
  readonly lines: readonly LineOutline[];
  /** Per tonne of product; NaN where it cannot be worked out. */
  readonly cost: { readonly id: string; readonly value: number };
  /** Which of the two facing pages shows it. */
  readonly faces: 'base' | 'with' | null;
  /** Whether its tonnes for the same service are somebody's figure, or what strength asks for. */
  readonly service: NonNullable<Route['service']>;
}

export function routeOutlines(open: OpenCase): readonly RouteOutline[] {
  return open.content.routes.map((route) => routeOutline(open, route));
}

function routeOutline(open: OpenCase, route: Route): RouteOutline {
  const { materials, compare } = open.content;
  const costId = `${route.id}.cost.total`;
  return {
    id: route.id,
    label: route.label,
    kind: kindOfLines(route.lines, materials),
    lines: route.lines.map((line) => lineOutline(open, route, line)),
    cost: { id: costId, value: valueOf(open, costId) },
    service: route.service ?? 'as given',
    faces: compare.base === route.id ? 'base' : compare.with === route.id ? 'with' : null,
  };
}

function lineOutline(open: OpenCase, route: Route, line: Line): LineOutline {
  const balance = lineBalance(open, route.id, line.id);
  return {
    id: line.id,
    label: line.label,
    stages: line.stages,
    grades: gradesOf(open, route, line),
    share: shareOf(open, `${route.id}.${line.id}.share`, route.balance === line.id),
    train: balance?.stages.map(({ label, kind }) => ({ label, kind })) ?? [],
    yield: balance?.yield ?? Number.NaN,
    electricity: balance?.electricityPerFeed ?? Number.NaN,
  };
}

function gradesOf(open: OpenCase, route: Route, line: Line): readonly GradeOutline[] {
  const labels = new Map(open.content.materials.map(({ id, label }) => [id, label]));
  return line.recipe.map(({ material }, place) => ({
    material,
    label: labels.get(material) ?? material,
    share: shareOf(open, `${route.id}.${line.id}.grade.${material}.share`, place === 0),
  }));
}

/** A line or a grade that stands alone has no share to name: it is the whole. */
function shareOf(open: OpenCase, id: string, isRest: boolean): Share {
  const explanation = explain(open, id);
  return explanation === null ? { id: '', value: 1, isRest } : { id, value: explanation.value, isRest };
}

function valueOf(open: OpenCase, id: string): number {
  return explain(open, id)?.value ?? Number.NaN;
}
