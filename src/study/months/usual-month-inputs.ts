import type { OpenCase } from '../open-case.ts';

/** The prices that months are usually of: of pulp and of recovered paper, each of the material that the compared routes buy most of. */
export function usualMonthInputs({
  content,
  model,
  values,
}: OpenCase): Pick<NonNullable<OpenCase['content']['months']>, 'pulp' | 'recovered'> | null {
  const inputs = new Set(model.graph.inputs.map(({ id }) => id));
  const routes = [content.compare.base, content.compare.with];
  const bought = (material: string): number =>
    routes
      .map((route) => `${route}.bought.${material}`)
      .reduce((sum, id) => sum + (values.has(id) ? values.number(id) || 0 : 0), 0);
  const mostBought = (isVirgin: boolean): string | null => {
    const candidates = content.materials
      .filter(({ id, origin }) => (origin === 'virgin') === isVirgin && inputs.has(`material.${id}.price`))
      .map(({ id }) => ({ id, mass: bought(id) }))
      .toSorted((one, other) => other.mass - one.mass);
    return candidates[0] === undefined ? null : `material.${candidates[0].id}.price`;
  };
  const [pulp, recovered] = [mostBought(true), mostBought(false)];
  return pulp === null || recovered === null ? null : { pulp, recovered };
}
