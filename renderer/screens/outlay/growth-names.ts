import type { PlanResults } from '../../../src/index.ts';

/** Short names of groups of prices, where their slots stand three abreast. */
export const growthNames: Readonly<Record<PlanResults['groups'][number]['id'], string>> = {
  pulp: 'Pulp',
  recovered: 'Recovered',
  freight: 'Freight',
  power: 'Power',
  heat: 'Heat',
  chemicals: 'Chemicals',
  water: 'Water',
  waste: 'Gate fees',
  landfillTax: 'Landfill tax',
  sales: 'Sold',
  carbon: 'Carbon',
  wages: 'Wages',
  maintenance: 'Upkeep',
  product: 'Product',
  machine: 'Machine effect',
  other: 'Other',
};
