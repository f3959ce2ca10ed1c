import type { Case } from './case.ts';
import type { Problem } from './problem.ts';

/** Names that are used twice where they must differ, and names that point at nothing. */
export function findReferenceProblems(found: Case): readonly Problem[] {
  const materials = found.materials.map((each) => each.id);
  const routes = found.routes.map((each) => each.id);
  const problems: Problem[] = [
    ...repeated('materials', materials),
    ...repeated(
      'chemicals',
      found.chemicals.map((each) => each.id),
    ),
    ...repeated(
      'destinations',
      found.destinations.map((each) => each.id),
    ),
    ...repeated('routes', routes),
    ...missing('compare.base', found.compare.base, 'route', routes),
    ...missing('compare.with', found.compare.with, 'route', routes),
  ];
  found.routes.forEach((route, r) => {
    const at = `routes.${String(r)}`;
    const lines = route.lines.map((each) => each.id);
    problems.push(...repeated(`${at}.lines`, lines), ...missing(`${at}.balance`, route.balance, 'line', lines));
    problems.push(
      ...repeated(
        `${at}.additives`,
        route.additives.map((each) => each.id),
      ),
      ...repeated(
        `${at}.charges`,
        route.charges.map((each) => each.id),
      ),
    );
    route.lines.forEach((line, l) => {
      problems.push(
        ...repeated(
          `${at}.lines.${String(l)}.stages`,
          line.stages.map((each) => each.id),
        ),
      );
      problems.push(
        ...repeated(
          `${at}.lines.${String(l)}.recipe`,
          line.recipe.map((each) => each.material),
        ),
      );
      line.recipe.forEach((grade, g) =>
        problems.push(
          ...missing(`${at}.lines.${String(l)}.recipe.${String(g)}.material`, grade.material, 'material', materials),
        ),
      );
    });
  });
  return problems;
}

function repeated(path: string, names: readonly string[]): Problem[] {
  const twice = names.filter((name, place) => names.indexOf(name) !== place);
  return twice.map((given) => ({ kind: 'said twice', path, given }));
}

function missing(path: string, given: string, what: string, known: readonly string[]): Problem[] {
  return known.includes(given) ? [] : [{ kind: 'unknown reference', path, given, what, known }];
}
