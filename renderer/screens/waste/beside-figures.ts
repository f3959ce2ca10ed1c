import type { RouteFootprint } from '../../../src/index.ts';
import type { Scale } from './scales.ts';

/** One thing that stands beside the sum: what it is, and where its figure stands. */
export interface BesideColumn {
  readonly head: string;
  /** What stands over it, for those who hear it. */
  readonly about: string;
  readonly scale: Scale;
  readonly of: (route: RouteFootprint) => { readonly value: number; readonly id: string | null };
}

interface Scales {
  readonly carbon: Scale;
  readonly volume: Scale;
}

export function methaneColumns({ carbon }: Scales): readonly BesideColumn[] {
  const column = (head: string, name: 'allTime' | 'years100' | 'years20' | 'firstYear', end: string): BesideColumn => ({
    head,
    about: 'landfill methane',
    scale: carbon,
    of: (route) => ({ value: route.landfillMethane[name], id: `${route.id}.landfill.methane${end}` }),
  });
  return [
    column('all time', 'allTime', ''),
    column('100 years', 'years100', '.100'),
    column('20 years', 'years20', '.20'),
    column('first year', 'firstYear', '.1'),
    {
      head: 'biogenic',
      about: 'CO2 of living matter, not summed',
      scale: carbon,
      of: ({ id, biogenic }) => ({ value: biogenic, id: `${id}.footprint.biogenic` }),
    },
  ];
}

export function contentColumns({ volume }: Scales): readonly BesideColumn[] {
  const water = (head: string, name: 'fresh' | 'withMaterials' | 'effluent' | 'elsewhere'): BesideColumn => ({
    head,
    about: 'water',
    scale: volume,
    of: (route) => ({ value: route.water[name], id: waterId(route, name) }),
  });
  return [
    {
      head: 'recycled, %',
      about: 'content',
      scale: { factor: 100, decimals: 1, unit: '%' },
      of: ({ id, recycled }) => ({ value: recycled.content, id: `${id}.recycled.content` }),
    },
    {
      head: 'to print, %',
      about: 'recycled content as it may be printed, rounded down',
      scale: { factor: 1, decimals: 0, unit: '%' },
      of: ({ recycled }) => ({ value: recycled.printable, id: null }),
    },
    { head: 'wood', about: '', scale: volume, of: ({ id, wood }) => ({ value: wood, id: `${id}.wood` }) },
    water('water in', 'fresh'),
    water('in materials', 'withMaterials'),
    water('effluent', 'effluent'),
    water('elsewhere', 'elsewhere'),
    {
      head: 'loop, mg/l',
      about: 'dissolved matter in the water loop',
      scale: { factor: 1, decimals: 0, unit: 'mg/l' },
      of: (route) => ({ value: route.water.concentration, id: route.water.concentrationId }),
    },
  ];
}

function waterId(route: RouteFootprint, name: 'fresh' | 'withMaterials' | 'effluent' | 'elsewhere'): string {
  if (name === 'fresh') return route.water.freshId;
  if (name === 'effluent') return route.water.effluentId;
  return `${route.id}.water.${name}`;
}
