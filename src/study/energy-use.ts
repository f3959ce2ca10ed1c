import type { OpenCase } from './open-case.ts';
import type { StageKind } from '../paper/catalogue.ts';

/** What uses energy, in the words of the floor. */
export type EnergyUse =
  | 'pulp or slush'
  | 'clean and screen'
  | 'float and wash'
  | 'refine'
  | 'disperse'
  | 'bleach'
  | 'pumps and thickening'
  | 'paper machine'
  | 'effluent treatment';

const useOf: Readonly<Record<StageKind, EnergyUse>> = {
  'slushing pulper': 'pulp or slush',
  'vat pulper': 'pulp or slush',
  'drum pulper': 'pulp or slush',
  'broke pulper': 'pulp or slush',
  detrashing: 'clean and screen',
  'high-density cleaner': 'clean and screen',
  'coarse screen': 'clean and screen',
  'fine screen': 'clean and screen',
  'forward cleaner': 'clean and screen',
  'lightweight cleaner': 'clean and screen',
  'flotation cell': 'float and wash',
  washer: 'float and wash',
  thickener: 'pumps and thickening',
  pumps: 'pumps and thickening',
  disperser: 'disperse',
  refiner: 'refine',
  'bleaching tower': 'bleach',
};

export const energyUses: readonly EnergyUse[] = [
  'pulp or slush',
  'clean and screen',
  'float and wash',
  'refine',
  'disperse',
  'bleach',
  'pumps and thickening',
  'paper machine',
  'effluent treatment',
];

/** Electricity in kWh/t and heat in GJ/t of one route, by what uses them. Both add up to the route's totals. */
export function energyByUse(
  { model, values }: OpenCase,
  routeId: string,
): readonly { readonly use: EnergyUse; readonly electricity: number; readonly heat: number }[] {
  const plant = model.routes.find((route) => route.plant.route.id === routeId)?.plant;
  const stages = plant?.lines.flatMap((line) => line.stages) ?? [];
  const sum = (use: EnergyUse, what: 'electricityUse' | 'heatUse'): number =>
    stages
      .filter((stage) => useOf[stage.kind] === use)
      .reduce((before, stage) => before + values.number(`${stage.id}.${what}`), 0);
  return energyUses.map((use) => {
    if (use === 'paper machine') {
      const heat = values.number(`${routeId}.heat.dryers`) + values.number(`${routeId}.heat.other`);
      return { use, electricity: values.number(`${routeId}.electricity.machine`), heat };
    }
    if (use === 'effluent treatment')
      return { use, electricity: values.number(`${routeId}.electricity.effluent`), heat: 0 };
    return { use, electricity: sum(use, 'electricityUse'), heat: sum(use, 'heatUse') };
  });
}
