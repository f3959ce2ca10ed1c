import type { ScenarioColumn } from '../../../../../src/index.ts';

/** Names of the limits that are broken, each once, with the routes that break it: "Ash of the board (Recovered)". */
export function brokenLimits({ limits }: Pick<ScenarioColumn, 'limits'>): readonly string[] {
  const broken = limits.filter(({ kept, value }) => !kept && !Number.isNaN(value));
  return [...new Set(broken.map(({ limit }) => limit.id))].map((id) => {
    const own = broken.filter(({ limit }) => limit.id === id);
    return `${own[0]?.limit.label ?? id} (${own.map(({ routeLabel }) => routeLabel).join(', ')})`;
  });
}
