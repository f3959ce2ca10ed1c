import type { EnergyUnit, Per } from '../../session/waste-place.svelte.ts';

/** What turns a figure per tonne of product into the one that is shown. */
export interface Scale {
  readonly factor: number;
  readonly decimals: number;
  /** As it stands in a heading: "kg", "t CO2e". */
  readonly unit: string;
}

// 1 kWh is 3.6 MJ by definition; 1 MMBtu is a million British thermal units of the International Table, 1.05505585262 GJ (ISO 31-4).
const gigajoules: Readonly<Record<EnergyUnit, number>> = { kWh: 0.0036, MWh: 3.6, GJ: 1, MMBtu: 1.05505585 };
const energyDecimals: Readonly<Record<EnergyUnit, number>> = { kWh: 0, MWh: 3, GJ: 2, MMBtu: 2 };
const energyOfYear: Readonly<Record<EnergyUnit, Omit<Scale, 'factor'> & { readonly divisor: number }>> = {
  kWh: { decimals: 1, unit: 'million kWh', divisor: 1_000_000 },
  MWh: { decimals: 1, unit: 'thousand MWh', divisor: 1000 },
  GJ: { decimals: 1, unit: 'TJ', divisor: 1000 },
  MMBtu: { decimals: 1, unit: 'thousand MMBtu', divisor: 1000 },
};

/** Masses come in tonnes, carbon in kilograms, water and wood in cubic metres, all per tonne of product. */
export function massScale(per: Per, tonnes: number): Scale {
  return per === 'tonne' ? { factor: 1000, decimals: 2, unit: 'kg' } : { factor: tonnes, decimals: 0, unit: 't' };
}

export function carbonScale(per: Per, tonnes: number): Scale {
  return per === 'tonne' ? { factor: 1, decimals: 1, unit: 'kg' } : { factor: tonnes / 1000, decimals: 0, unit: 't' };
}

export function volumeScale(per: Per, tonnes: number): Scale {
  return per === 'tonne'
    ? { factor: 1, decimals: 2, unit: 'm³' }
    : { factor: tonnes / 1000, decimals: 0, unit: '1,000 m³' };
}

export function energyScale(source: 'electricity' | 'heat', unit: EnergyUnit, per: Per, tonnes: number): Scale {
  const inGigajoules = source === 'electricity' ? gigajoules.kWh : 1;
  const factor = inGigajoules / gigajoules[unit];
  if (per === 'tonne') return { factor, decimals: energyDecimals[unit], unit };
  const { divisor, ...shown } = energyOfYear[unit];
  return { factor: (factor * tonnes) / divisor, ...shown };
}
