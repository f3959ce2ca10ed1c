export type Per = 'tonne' | 'year';
export type EnergyUnit = 'kWh' | 'GJ' | 'MWh' | 'MMBtu';

export const energyUnits: readonly EnergyUnit[] = ['kWh', 'GJ', 'MWh', 'MMBtu'];

/** How waste and carbon are looked at. It is kept while other pages are read. */
export class WastePlace {
  per = $state.raw<Per>('tonne');
  energyUnit = $state.raw<EnergyUnit>('kWh');
  /** The stream whose way is open; "" for the largest. */
  stream = $state.raw('');
  showsMemo = $state.raw(false);
}
