import type { RouteFootprint, UsedEnergy } from '../../../src/index.ts';
import { addingUp } from '../../numbers/adding-up.ts';
import { upperFirst } from '../../numbers/letter-case.ts';
import type { Facing } from './route-names.ts';
import type { Scale } from './scales.ts';

export interface EnergySide {
  readonly electricity: number;
  readonly heat: number;
  readonly electricityId: string;
  readonly heatId: string;
}

export interface EnergyRow {
  readonly key: string;
  readonly label: string;
  readonly base: EnergySide;
  readonly with: EnergySide;
}

export interface EnergyScales {
  readonly power: Scale;
  readonly heat: Scale;
}

/** Uses that take nothing on either page are left out. */
export function energyRows(facing: Facing, scales: EnergyScales): readonly EnergyRow[] {
  const [base, other] = [sidesOf(facing.base, scales), sidesOf(facing.with, scales)];
  return facing.base.energy.flatMap((used, place): EnergyRow[] => {
    const faced = facing.with.energy[place];
    const [left, right] = [base[place], other[place]];
    if (faced === undefined || left === undefined || right === undefined || isIdle(used, faced)) return [];
    return [{ key: used.use, label: upperFirst(used.use), base: left, with: right }];
  });
}

export function energyTotal(facing: Facing, scales: EnergyScales): EnergyRow {
  const side = (route: RouteFootprint): EnergySide => ({
    electricity: rounded(route.electricity, scales.power),
    heat: rounded(route.heat, scales.heat),
    electricityId: `${route.id}.electricity.total`,
    heatId: `${route.id}.heat.total`,
  });
  return { key: 'all', label: 'All', base: side(facing.base), with: side(facing.with) };
}

/** Heat that residues give, and that nothing else has to. */
export function sparedHeat(facing: Facing, { heat }: EnergyScales) {
  const side = (route: RouteFootprint) => ({
    heat: rounded(route.heatFromResidues, heat),
    heatId: `${route.id}.heat.fromResidues`,
  });
  return { base: side(facing.base), with: side(facing.with) };
}

/** The largest figure of some rows in one measure, so that electricity and heat share one scale. */
export function largestEnergy(rows: readonly EnergyRow[]): number {
  const figures = rows.flatMap((row) => [row.base, row.with].flatMap(({ electricity, heat }) => [electricity, heat]));
  return Math.max(0, ...figures.filter(Number.isFinite));
}

function isIdle(...sides: readonly UsedEnergy[]): boolean {
  return sides.every(({ electricity, heat }) => electricity === 0 && heat === 0);
}

function sidesOf(route: RouteFootprint, { power, heat }: EnergyScales): readonly EnergySide[] {
  const electricity = shown(
    route.energy.map((each) => each.electricity),
    route.electricity,
    power,
  );
  const warmth = shown(
    route.energy.map((each) => each.heat),
    route.heat,
    heat,
  );
  return route.energy.map(({ electricityId, heatId }, place) => ({
    electricity: electricity[place] ?? Number.NaN,
    heat: warmth[place] ?? Number.NaN,
    electricityId,
    heatId,
  }));
}

function shown(parts: readonly number[], whole: number, { factor, decimals }: Scale): readonly number[] {
  return addingUp(
    parts.map((part) => part * factor),
    whole * factor,
    decimals,
  );
}

function rounded(value: number, { factor, decimals }: Scale): number {
  return Number((value * factor).toFixed(decimals));
}
