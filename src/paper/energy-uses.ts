import { type Quantity, total } from '../kernel/expression/quantity.ts';
import type { StageKind } from './catalogue.ts';
import { hasBackPressure, lostPowerIdOf } from './back-pressure.ts';
import type { Plant } from './plant.ts';
import { pressesResidues } from './residue-power.ts';
import type { Sheet } from './sheet.ts';

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
  | 'effluent treatment'
  | 'rejects and sludge'
  | 'less made in back pressure';

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

/** What every case tells. */
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

/** What is told only where the case has it, in all routes alike. */
export const occasionalUses: readonly EnergyUse[] = ['rejects and sludge', 'less made in back pressure'];

/** Where the electricity or the heat of one use stands. */
export function energyUseIdOf(routeId: string, what: 'electricity' | 'heat', use: EnergyUse): string {
  if (what === 'electricity' && use === 'paper machine') return `${routeId}.electricity.machine`;
  if (what === 'electricity' && use === 'rejects and sludge') return `${routeId}.electricity.residues`;
  if (what === 'electricity' && use === 'less made in back pressure') return lostPowerIdOf(routeId);
  if (what === 'electricity' && use === 'effluent treatment') return `${routeId}.electricity.effluent`;
  return `${routeId}.${what}.use.${use.replaceAll(' ', '-')}`;
}

/** Electricity and heat of one route by what uses them. Both add up to the route's totals. */
export function energyByUse(sheet: Sheet, { route, lines }: Plant): void {
  const stages = lines.flatMap((line) => line.stages);
  const later = (id: string, unit: string): Quantity => sheet.graph.later(id, unit);
  const define = (what: 'electricity' | 'heat', use: EnergyUse, parts: readonly Quantity[], note: string): void => {
    const unit = what === 'electricity' ? 'kWh/t' : 'GJ/t';
    const label = `${what === 'electricity' ? 'Electricity' : 'Heat'}, ${use}`;
    sheet.define(energyUseIdOf(route.id, what, use), label, unit, total(parts, unit), { where: route.label, note });
  };
  for (const use of energyUses) {
    if (use === 'paper machine') {
      const heat = [later(`${route.id}.heat.dryers`, 'GJ/t'), later(`${route.id}.heat.other`, 'GJ/t')];
      define('heat', use, heat, 'Dryers and the other heat of the machine.');
      continue;
    }
    if (use === 'effluent treatment') {
      define('heat', use, [], 'Treating effluent takes no heat.');
      continue;
    }
    const note = 'All stages of this kind, over all lines.';
    const own = stages.filter((stage) => useOf[stage.kind] === use);
    const power = own.map(({ id }) => later(`${id}.electricityUse`, 'kWh/t'));
    const heat = own.map(({ id }) => later(`${id}.heatUse`, 'GJ/t'));
    define('electricity', use, power, note);
    define('heat', use, heat, note);
  }
  if (pressesResidues(sheet)) define('heat', 'rejects and sludge', [], 'Pressing residues takes no heat.');
  if (hasBackPressure(sheet)) define('heat', 'less made in back pressure', [], 'What is lost is power.');
}
