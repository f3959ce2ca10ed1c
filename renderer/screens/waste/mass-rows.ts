import type { RouteFootprint, StreamMass } from '../../../src/index.ts';
import { addingUp } from '../../numbers/adding-up.ts';
import { ways } from './ways.ts';
import type { Facing } from './route-names.ts';
import type { Scale } from './scales.ts';

/** Masses of one route in one row, as shown; dry is bone-dry, wet as hauled. */
export interface MassSide {
  readonly dry: number;
  readonly wet: number;
  readonly dryId: string;
  readonly wetId: string;
  /** Where it goes: "landfill 80, sold 20"; "" where that says nothing. */
  readonly to: string;
}

/** A side is null where the route has no such stream. */
export interface MassRow {
  readonly key: string;
  readonly label: string;
  readonly base: MassSide | null;
  readonly with: MassSide | null;
}

interface Mass {
  readonly key: string;
  readonly label: string;
  readonly dry: number;
  readonly wet: number;
  readonly dryId: string;
  readonly wetId: string;
  readonly to: string;
}

export function streamRows(facing: Facing, scale: Scale): readonly MassRow[] {
  const order = [...new Map([...facing.with.streams, ...facing.base.streams].map((each) => [each.stream, each]))];
  return rowsOf(
    facing,
    scale,
    order.map(([key, { label }]) => ({ key, label })),
    (route) => route.streams.map(ofStream),
  );
}

/** Destinations that neither route uses are left out. */
export function destinationRows(facing: Facing, scale: Scale): readonly MassRow[] {
  const used = facing.base.waste.destinations.filter(({ destination, wet }) => {
    const other = facing.with.waste.destinations.find((each) => each.destination === destination);
    return wet !== 0 || other?.wet !== 0;
  });
  const names = used.map(({ destination, label }) => ({ key: destination, label }));
  return rowsOf(facing, scale, names, ({ waste }) =>
    waste.destinations.map((each) => ({ ...each, key: each.destination, to: '' })),
  );
}

export function totalRow(facing: Facing, scale: Scale): MassRow {
  const side = ({ waste }: RouteFootprint): MassSide => ({
    dry: rounded(waste.dry, scale),
    wet: rounded(waste.wet, scale),
    dryId: waste.dryId,
    wetId: waste.wetId,
    to: '',
  });
  return { key: 'all', label: 'All residues', base: side(facing.base), with: side(facing.with) };
}

/** The largest wet mass of some rows: bars of both tables share one scale. */
export function largestWet(rows: readonly MassRow[]): number {
  return Math.max(0, ...rows.flatMap((row) => [row.base?.wet ?? 0, row.with?.wet ?? 0]).filter(Number.isFinite));
}

function rowsOf(
  facing: Facing,
  scale: Scale,
  names: readonly { readonly key: string; readonly label: string }[],
  massesOf: (route: RouteFootprint) => readonly Mass[],
): readonly MassRow[] {
  const sides = {
    base: shown(massesOf(facing.base), facing.base, scale),
    with: shown(massesOf(facing.with), facing.with, scale),
  };
  return names.map(({ key, label }) => ({
    key,
    label,
    base: sides.base.get(key) ?? null,
    with: sides.with.get(key) ?? null,
  }));
}

function shown(masses: readonly Mass[], { waste }: RouteFootprint, scale: Scale): ReadonlyMap<string, MassSide> {
  const parts = (kind: 'dry' | 'wet'): readonly number[] =>
    addingUp(
      masses.map((mass) => mass[kind] * scale.factor),
      waste[kind] * scale.factor,
      scale.decimals,
    );
  const [dry, wet] = [parts('dry'), parts('wet')];
  return new Map(
    masses.map(({ key, dryId, wetId, to }, place) => [
      key,
      { dry: dry[place] ?? Number.NaN, wet: wet[place] ?? Number.NaN, dryId, wetId, to },
    ]),
  );
}

function ofStream(stream: StreamMass): Mass {
  return { ...stream, key: stream.stream, wetId: stream.quantityId, to: ways(stream) };
}

function rounded(value: number, { factor, decimals }: Scale): number {
  return Number((value * factor).toFixed(decimals));
}
