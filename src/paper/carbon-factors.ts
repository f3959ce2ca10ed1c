import { Decimal } from '../kernel/evaluate/decimal-settings.ts';
import factorRows from './defaults/carbon-factors.json' with { type: 'json' };
import gridTable from './defaults/grid-intensities.json' with { type: 'json' };
import type { Figure } from './figure.ts';

/** What a carbon factor takes in. A factor of one boundary never stands in for another: haulage is not treatment. */
export type CarbonBoundary =
  | 'use of fuel'
  | 'fuel upstream'
  | 'generation of electricity'
  | 'losses and upstream of electricity'
  | 'cradle to gate'
  | 'collection and sorting'
  | 'transport only'
  | 'treatment'
  | 'global warming potential'
  | 'decay';

/** A carbon factor with all that decides whether it may be set beside another one. */
export interface CarbonFigure extends Figure {
  readonly label: string;
  /** The year of the set it comes from, "2025"; "" where common practice or the source names none. */
  readonly year: string;
  readonly boundary: CarbonBoundary;
  /** CO2 of living matter: counted in, left out, or told apart in a figure of its own. */
  readonly biogenic: 'in' | 'out' | 'apart';
  /** How recovered material shares the burden of its first life. */
  readonly allocation: 'none' | 'cut-off' | 'closed loop' | 'substitution';
  /** The set of global warming potentials behind its CO2e; "none" where it is CO2 alone, or no set is known. */
  readonly gwp: 'AR4' | 'AR5' | 'AR6' | 'none';
  /** What to look up before the figure is relied on. */
  readonly verify?: string;
}

/** A region of the electricity grid: "GBR", "EU", "NORTH AMERICA". */
export interface GridRegion {
  readonly key: string;
  readonly name: string;
}

interface GridRow {
  readonly name: string;
  /** kgCO2e/kWh. */
  readonly value: string;
  readonly year: string;
}

/** Whom the grid intensities are owed to and what is known of their years; to be shown wherever they are. */
export const gridAttribution = `${gridTable.attribution} ${gridTable.package}. Licence: ${gridTable.licence}.`;

/**
 * All carbon factors by key: "fuel.lpg.use" in kgCO2e per GJ net, "freight.rail" in kgCO2e/t-km, "landfill.k.tropical-dry" in 1/a. Each
 * names its source row, its year and its boundary. Keys that begin with "refused." are published figures whose boundary fits no cause of
 * a footprint; they are here so that the program knows them.
 */
export const carbonFactors: ReadonlyMap<string, CarbonFigure> = new Map(
  Object.entries(factorRows) as [string, CarbonFigure][],
);

const averageRows: ReadonlyMap<string, GridRow> = new Map(Object.entries(gridTable.average));
const marginalRows: ReadonlyMap<string, GridRow> = new Map(Object.entries(gridTable.marginal));

/** Throws where there is no such factor: which keys are asked for is the program's affair, never a person's. */
export function carbonFactor(key: string): CarbonFigure {
  const figure = carbonFactors.get(key);
  if (figure === undefined) throw new Error(`No carbon factor "${key}"`);
  return figure;
}

/**
 * Average intensity of a region's grid, kgCO2e/kWh, for inventories; nothing where the region is unknown. The range is a fifth either way,
 * as far as a large grid moves in a year (European Union 2023 against 2022: down 19 %, European Environment Agency).
 */
export function gridFactor(region: string): CarbonFigure | undefined {
  const row = averageRows.get(region);
  return row === undefined
    ? undefined
    : gridFigure(row, {
        label: `Grid electricity, average, ${row.name}`,
        source: 'grid_avg_eu',
        note: row.year === '' ? 'year not known, 2024 at the latest' : 'range a fifth either way, as from year to year',
      });
}

/** Operating margin of a country's grid, kgCO2e/kWh: for the effect of a change only, never for an inventory. */
export function marginalGridFactor(region: string): CarbonFigure | undefined {
  const row = marginalRows.get(region);
  return row === undefined
    ? undefined
    : gridFigure(row, {
        label: `Grid electricity, marginal, ${row.name}`,
        source: 'grid_marg_deu',
        note: 'operating margin: what a change of use moves, not what an average kWh emits',
      });
}

/** Regions that have an average, by name. */
export function gridRegions(): readonly GridRegion[] {
  const regions = [...averageRows].map(([key, { name }]) => ({ key, name }));
  return regions.sort((left, right) => (left.name < right.name ? -1 : 1));
}

function gridFigure(row: GridRow, about: Pick<CarbonFigure, 'label' | 'source' | 'note'>): CarbonFigure {
  const value = new Decimal(row.value);
  return {
    ...about,
    value: row.value,
    low: value.times('0.8').toString(),
    high: value.times('1.2').toString(),
    unit: 'kgCO2e/kWh',
    status: 'read',
    year: row.year,
    boundary: 'generation of electricity',
    biogenic: 'out',
    allocation: 'none',
    gwp: 'none',
  };
}
