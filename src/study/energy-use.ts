import { type EnergyUse, energyUseIdOf, energyUses, occasionalUses } from '../paper/energy-uses.ts';
import type { OpenCase } from './open-case.ts';

export { type EnergyUse, energyUses } from '../paper/energy-uses.ts';

/** Electricity in kWh/t and heat in GJ/t of one use, with the ids of their working. */
export interface UsedEnergy {
  readonly use: EnergyUse;
  readonly electricity: number;
  readonly heat: number;
  readonly electricityId: string;
  readonly heatId: string;
}

/** Electricity and heat of one route, by what uses them. Both add up to the route's totals. */
export function energyByUse({ values }: OpenCase, routeId: string): readonly UsedEnergy[] {
  const told = occasionalUses.filter((use) => values.has(energyUseIdOf(routeId, 'heat', use)));
  return [...energyUses, ...told].map((use) => {
    const electricityId = energyUseIdOf(routeId, 'electricity', use);
    const heatId = energyUseIdOf(routeId, 'heat', use);
    return {
      use,
      electricity: values.number(electricityId),
      heat: values.number(heatId),
      electricityId,
      heatId,
    };
  });
}
