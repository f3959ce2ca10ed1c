import { keptFromLines, keptFromRoutes, keptNameProblems } from './kept-names.ts';
import type { Problem } from './problem.ts';
import { isAbout } from './same-product.ts';

/**
 * Names that are used twice where they must differ, that the program keeps for itself, or that point at nothing. It takes the content as it was read, so that these
 * are told together with mistakes of form elsewhere; where a list of names cannot be read, nothing is said about what points into it.
 */
export function findReferenceProblems(content: unknown): Problem[] {
  const materials = namesOf(content, 'materials', 'id');
  const routes = namesOf(content, 'routes', 'id');
  const compare = valueAt(content, 'compare');
  return [
    ...repeated('materials', materials),
    ...repeated('chemicals', namesOf(content, 'chemicals', 'id')),
    ...repeated('destinations', namesOf(content, 'destinations', 'id')),
    ...repeated('residues', namesOf(content, 'residues', 'stream')),
    ...repeated('wasteCodes', namesOf(content, 'wasteCodes', 'stream')),
    ...repeated('routes', routes),
    ...missing('investment.from', valueAt(valueAt(content, 'investment'), 'from'), 'route', routes),
    ...missing('investment.to', valueAt(valueAt(content, 'investment'), 'to'), 'route', routes),
    ...planProblems(valueAt(content, 'investment')),
    ...repeated('investment.items', namesOf(valueAt(content, 'investment'), 'items', 'id')),
    ...repeated('investment.supports', namesOf(valueAt(content, 'investment'), 'supports', 'id')),
    ...trustProblems(content, routes),
    ...repeated('investment.outlets', namesOf(valueAt(content, 'investment'), 'outlets', 'destination')),
    ...listAt(valueAt(content, 'investment'), 'outlets').flatMap((outlet, place) =>
      missing(
        `investment.outlets.${String(place)}.destination`,
        valueAt(outlet, 'destination'),
        'destination',
        namesOf(content, 'destinations', 'id'),
      ),
    ),
    ...repeated('limits', namesOf(content, 'limits', 'id')),
    ...repeated('scenarios', namesOf(content, 'scenarios', 'id')),
    ...listAt(content, 'limits').flatMap((limit, place) =>
      missing(`limits.${String(place)}.route`, valueAt(limit, 'route'), 'route', routes),
    ),
    ...repeated('lots.offers', namesOf(valueAt(content, 'lots'), 'offers', 'id')),
    ...keptNameProblems('routes', routes ?? [], keptFromRoutes),
    ...missing('compare.base', valueAt(compare, 'base'), 'route', routes),
    ...missing('compare.with', valueAt(compare, 'with'), 'route', routes),
    ...additiveProblems(content),
    ...listAt(content, 'routes').flatMap((route, place) => routeProblems(route, `routes.${String(place)}`, materials)),
  ];
}

function routeProblems(route: unknown, at: string, materials: Names): Problem[] {
  const lines = namesOf(route, 'lines', 'id');
  return [
    ...repeated(`${at}.lines`, lines),
    ...keptNameProblems(`${at}.lines`, lines ?? [], keptFromLines),
    ...missing(`${at}.balance`, valueAt(route, 'balance'), 'line', lines),
    ...repeated(`${at}.additives`, namesOf(route, 'additives', 'id')),
    ...repeated(`${at}.machineChemicals`, textsOf(listAt(route, 'machineChemicals'))),
    ...repeated(`${at}.charges`, namesOf(route, 'charges', 'id')),
    ...listAt(route, 'lines').flatMap((line, place) => lineProblems(line, `${at}.lines.${String(place)}`, materials)),
  ];
}

/** An additive has one price and one carbon factor for all routes, so its name stands for one kind of thing in all of them. */
function additiveProblems(content: unknown): Problem[] {
  const kinds = new Map<string, string>();
  return listAt(content, 'routes').flatMap((route, r) =>
    listAt(route, 'additives').flatMap((additive, a): Problem[] => {
      const [id, kind] = [valueAt(additive, 'id'), valueAt(additive, 'kind')];
      if (typeof id !== 'string' || typeof kind !== 'string') return [];
      const known = kinds.get(id) ?? kind;
      kinds.set(id, known);
      const path = `routes.${String(r)}.additives.${String(a)}.kind`;
      return known === kind
        ? []
        : [
            {
              kind: 'wrong form',
              path,
              given: `"${kind}"`,
              allowed: `"${known}", which "${id}" is in another route`,
            },
          ];
    }),
  );
}

function lineProblems(line: unknown, at: string, materials: Names): Problem[] {
  return [
    ...repeated(`${at}.stages`, namesOf(line, 'stages', 'id')),
    ...repeated(`${at}.recipe`, namesOf(line, 'recipe', 'material')),
    ...listAt(line, 'stages').flatMap((stage, place) => forwardProblems(stage, `${at}.stages.${String(place)}`)),
    ...listAt(line, 'recipe').flatMap((grade, place) =>
      missing(`${at}.recipe.${String(place)}.material`, valueAt(grade, 'material'), 'material', materials),
    ),
  ];
}

/** Single stages that go forward must be among those the cascade has; how many it has by default, the program's list of stages says. */
function forwardProblems(stage: unknown, at: string): Problem[] {
  const levels = valueAt(stage, 'levels');
  if (typeof levels !== 'number') return [];
  return listAt(stage, 'forward').flatMap((number, place): Problem[] => {
    if (typeof number !== 'number' || number <= levels) return [];
    const allowed =
      levels < 2
        ? 'none, for there is one single stage'
        : levels === 2
          ? '2'
          : `a single stage from 2 to ${String(levels)}`;
    return [{ kind: 'wrong form', path: `${at}.forward.${String(place)}`, given: String(number), allowed }];
  });
}

/** Answers about pairs of routes that exist, each pair and each question once; one measured figure for a result. */
function trustProblems(content: unknown, routes: Names): Problem[] {
  const pairs = listAt(content, 'sameProduct');
  return [
    ...pairs.flatMap((pair, place): Problem[] => {
      const at = `sameProduct.${String(place)}`;
      const [base, other] = [valueAt(pair, 'base'), valueAt(pair, 'with')];
      return [
        ...missing(`${at}.base`, base, 'route', routes),
        ...missing(`${at}.with`, other, 'route', routes),
        ...pairProblems(at, base, other, pairs.slice(0, place)),
        ...repeated(`${at}.answers`, namesOf(pair, 'answers', 'question')),
      ];
    }),
    ...repeated('actuals', namesOf(content, 'actuals', 'result')),
  ];
}

function pairProblems(at: string, base: unknown, other: unknown, before: readonly unknown[]): Problem[] {
  if (typeof base !== 'string' || typeof other !== 'string') return [];
  if (base === other)
    return [{ kind: 'wrong form', path: `${at}.with`, given: other, allowed: 'another route than "base"' }];
  const isKnown = before.some((each) => {
    const [one, another] = [valueAt(each, 'base'), valueAt(each, 'with')];
    return typeof one === 'string' && typeof another === 'string' && isAbout({ base: one, with: another }, base, other);
  });
  return isKnown ? [{ kind: 'said twice', path: at, given: `${base}, ${other}` }] : [];
}

/** A plan between two routes, whose years lie within it. */
function planProblems(plan: unknown): Problem[] {
  const [years, from] = [valueAt(plan, 'years'), valueAt(plan, 'operatesFrom')];
  const path = 'investment';
  const wrong = (at: string, given: unknown, allowed: string): Problem[] => [
    { kind: 'wrong form', path: `${path}.${at}`, given: String(given), allowed },
  ];
  if (typeof years !== 'number' || typeof from !== 'number') return [];
  const within = `a year from 0 to ${String(years)}, the last of the plan`;
  return [
    ...(valueAt(plan, 'from') === valueAt(plan, 'to')
      ? wrong('to', valueAt(plan, 'to'), 'another route than "from"')
      : []),
    ...(from > years ? wrong('operatesFrom', from, within) : []),
    ...['supports', 'outlets'].flatMap((list) =>
      listAt(plan, list).flatMap((each, place): Problem[] => {
        const [first, last] = [valueAt(each, 'first'), valueAt(each, 'last')];
        if (typeof first !== 'number' || typeof last !== 'number') return [];
        const at = `${list}.${String(place)}`;
        if (last > years) return wrong(`${at}.last`, last, within);
        return first > last ? wrong(`${at}.first`, first, 'no year after the last') : [];
      }),
    ),
  ];
}

/** The names in a list; null in place of one that cannot be read, and of the whole where there is no list. */
type Names = readonly (string | null)[] | null;

function namesOf(content: unknown, list: string, key: string): Names {
  return Array.isArray(valueAt(content, list))
    ? textsOf(listAt(content, list).map((each) => valueAt(each, key)))
    : null;
}

function textsOf(values: readonly unknown[]): Names {
  return values.map((value) => (typeof value === 'string' ? value : null));
}

function listAt(content: unknown, key: string): readonly unknown[] {
  const value = valueAt(content, key);
  return Array.isArray(value) ? value : [];
}

function valueAt(content: unknown, key: string): unknown {
  if (typeof content !== 'object' || content === null || !Object.hasOwn(content, key)) return undefined;
  return (content as Readonly<Record<string, unknown>>)[key];
}

function repeated(path: string, names: Names): Problem[] {
  const met = new Set<string>();
  return (names ?? []).flatMap((name): Problem[] => {
    if (name === null || !met.has(name)) {
      if (name !== null) met.add(name);
      return [];
    }
    return [{ kind: 'said twice', path, given: name }];
  });
}

function missing(path: string, given: unknown, what: string, names: Names): Problem[] {
  if (typeof given !== 'string' || names === null || names.includes(null) || names.includes(given)) return [];
  return [{ kind: 'unknown reference', path, given, what, known: names.filter((name) => name !== null) }];
}
