import type { Bounds } from '../kernel/expression/operation.ts';
import { Decimal } from '../kernel/evaluate/decimal-settings.ts';
import { Failure } from '../kernel/evaluate/failure.ts';
import type { InputDeclaration } from '../kernel/graph/input-declaration.ts';
import type { OpenCase } from './open-case.ts';

/** Something to look at: none of it stops a calculation. Sentences are made in wording. */
export type Caution =
  | { readonly kind: 'list price'; readonly about: string; readonly material: string }
  | {
      readonly kind: 'unusual figure';
      readonly about: string;
      readonly input: InputDeclaration;
      readonly given: string;
    }
  | { readonly kind: 'effluent below nothing'; readonly about: string; readonly route: string; readonly value: string }
  | {
      readonly kind: 'unpriced additive';
      readonly about: string;
      readonly route: string;
      readonly place: 'wet end' | 'surface';
    }
  | { readonly kind: 'no figure'; readonly about: string; readonly label: string; readonly unit: string }
  | {
      readonly kind: 'cannot be worked out';
      readonly about: string;
      readonly label: string;
      readonly value: string;
      readonly bounds: Bounds | null;
    };

export function cautionsOf(open: OpenCase): readonly Caution[] {
  return [
    ...gaps(open),
    ...failures(open),
    ...listPrices(open),
    ...unusualFigures(open),
    ...effluents(open),
    ...unpricedAdditives(open),
  ];
}

function gaps({ gaps: found }: OpenCase): readonly Caution[] {
  return found.flatMap((gap): Caution[] =>
    gap.kind === 'no figure' ? [{ kind: 'no figure', about: gap.id, label: gap.label, unit: gap.unit }] : [],
  );
}

/** Where failures began, each once; a missing figure is told as a gap. */
function failures({ model, values }: OpenCase): readonly Caution[] {
  const origins = new Map<number, Failure>();
  for (const node of model.graph.nodes) {
    const value = values.at(node);
    if (value instanceof Failure && value.reason.kind !== 'no value given') origins.set(value.at, value);
  }
  return [...origins.values()].map(({ at, reason }): Caution => {
    const named = namedAbove(at, model.graph.nodes);
    const bounds = reason.kind === 'outside' ? reason.bounds : null;
    return {
      kind: 'cannot be worked out',
      about: named?.id ?? '',
      label: named?.label ?? 'A figure',
      value: reason.kind === 'outside' ? reason.value : '',
      bounds,
    };
  });
}

/** The first named quantity at or after a node that is made of it. */
function namedAbove(
  start: number,
  nodes: OpenCase['model']['graph']['nodes'],
): { readonly id: string; readonly label: string } | null {
  const reached = new Set([start]);
  for (const node of nodes.slice(start)) {
    if (!reached.has(node.index) && !node.args.some((arg) => reached.has(arg))) continue;
    if (node.declaration !== null) return node.declaration;
    reached.add(node.index);
  }
  return null;
}

/** Pulp is quoted as list and recovered paper as traded: a list price without a discount flatters whatever it is compared with. */
function listPrices({ content, model }: OpenCase): readonly Caution[] {
  const used = new Set(
    content.routes.flatMap((route) => route.lines.flatMap((line) => line.recipe.map((grade) => grade.material))),
  );
  return content.materials
    .filter(
      (material) =>
        material.price.kind === 'list' &&
        used.has(material.id) &&
        !model.graph.positions.has(`material.${material.id}.discount`),
    )
    .map((material) => ({ kind: 'list price', about: `material.${material.id}.price`, material: material.label }));
}

function unusualFigures({ model }: OpenCase): readonly Caution[] {
  return model.graph.inputs.flatMap((input): Caution[] => {
    const { low, high } = input.usual;
    if (
      input.given === null ||
      low === null ||
      high === null ||
      input.usual.provenance.status === 'none' ||
      low === high
    )
      return [];
    const given = new Decimal(input.given.value);
    const usual = given.greaterThanOrEqualTo(low) && given.lessThanOrEqualTo(high);
    return usual ? [] : [{ kind: 'unusual figure', about: input.id, input, given: input.given.value }];
  });
}

function effluents({ content, values }: OpenCase): readonly Caution[] {
  return content.routes.flatMap((route): Caution[] => {
    const id = `${route.id}.water.effluent`;
    if (!values.has(id) || !(values.number(id) < 0)) return [];
    return [{ kind: 'effluent below nothing', about: id, route: route.label, value: values.exact(id) }];
  });
}

/** Additives that the machine adds and no additive of the route stands for: they would be free. */
function unpricedAdditives({ content, values }: OpenCase): readonly Caution[] {
  const places = [
    ['wet end', 'wetEndAdditives'],
    ['surface', 'surfaceAdditives'],
  ] as const;
  return content.routes.flatMap((route) =>
    places.flatMap(([place, name]): Caution[] => {
      const id = `${route.id}.machine.${name}`;
      const isMissing = values.number(id) > 0 && !route.additives.some((additive) => additive.place === place);
      return isMissing ? [{ kind: 'unpriced additive', about: id, route: route.label, place }] : [];
    }),
  );
}
