import { type Quantity, constant } from '../../kernel/expression/quantity.ts';
import type { StageEntry } from '../catalogue.ts';
import { plainFigure } from '../figure.ts';
import { type Sheet, notNegative } from '../sheet.ts';
import type { StagePlace } from './stage-place.ts';

/** Electricity of a stage, kWh per bone-dry tonne fed to it from the stage before. */
export function electricityOf(sheet: Sheet, place: StagePlace, entry: StageEntry, feedMass: Quantity): Quantity {
  if (entry.kind === 'refiner') return refiningOf(sheet, place, entry, feedMass);
  return sheet.input({
    id: `${place.id}.electricity`,
    label: 'Electricity',
    where: place.where,
    unit: 'kWh/bdt',
    figure: entry.electricity,
    allowed: notNegative,
  });
}

/**
 * Refining is billed at the gross figure: net specific energy does the work on the fibre, and the no-load power of the refiner is
 * spread over the tonnes that pass. gross = net + no-load power / throughput.
 */
function refiningOf(sheet: Sheet, place: StagePlace, entry: StageEntry, feedMass: Quantity): Quantity {
  const where = place.where;
  if (place.stage.power !== 'net and no-load') {
    return sheet.input({
      id: `${place.id}.electricity`,
      label: 'Refining energy, gross',
      where,
      unit: 'kWh/bdt',
      figure: entry.electricity,
      allowed: notNegative,
    });
  }
  const tonnes = sheet.graph.later('product.tonnes', 't/a');
  const hours = sheet.graph.later('product.hours', 'h/a');
  const perHour = sheet.graph.later(place.lineFeedId, 'bdt/t').times(feedMass).times(tonnes).dividedBy(hours);
  const throughput = sheet.define(`${place.id}.throughput`, 'Stock through the refiner', 'bdt/h', perHour, { where });
  const net = sheet.input({
    id: `${place.id}.net`,
    label: 'Refining energy, net',
    where,
    unit: 'kWh/bdt',
    ...(entry.net === undefined ? {} : { figure: entry.net }),
    allowed: notNegative,
  });
  const noLoad = sheet.input({
    id: `${place.id}.noLoad`,
    label: 'No-load power',
    where,
    unit: 'kW',
    allowed: notNegative,
  });
  const netPower = net.times(throughput).times(constant('1', 'kW*h/kWh'));
  const edge = {
    id: `${place.id}.edgeLength`,
    label: 'Cutting edge length',
    where,
    unit: 'km/s',
    allowed: { above: '0' },
  } as const;
  if (sheet.has(edge)) {
    // 1 kW per km/s is 1 J/m.
    const load = netPower.dividedBy(sheet.input(edge)).times(constant('1', 'J*km/kW/m/s'));
    sheet.define(`${place.id}.edgeLoad`, 'Specific edge load', 'J/m', load, { where });
  }
  const idle = noLoad.dividedBy(throughput).times(constant('1', 'kWh/h/kW'));
  return sheet.define(`${place.id}.gross`, 'Refining energy, gross', 'kWh/bdt', net.plus(idle), {
    where,
    note: 'Net energy plus no-load power over the throughput.',
  });
}

/** Heat of a stage, GJ per bone-dry tonne fed to it; nothing where stock is not heated above its loop. */
export function heatOf(sheet: Sheet, place: StagePlace, entry: StageEntry): Quantity {
  const how = place.stage.heat ?? (entry.heat === undefined || 'given' in entry.heat ? 'given' : 'computed');
  if (how === 'computed') return computedHeat(sheet, place, entry);
  const figure = entry.heat !== undefined && 'given' in entry.heat ? entry.heat.given : undefined;
  return sheet.optional({
    id: `${place.id}.heat`,
    label: 'Heat',
    where: place.where,
    unit: 'GJ/bdt',
    figure,
    allowed: notNegative,
  });
}

/**
 * Heating stock at consistency c from T1 to T2: q = [1.35 + 4.187 (1 - c)/c] (T2 - T1) MJ/bdt, with 1.35 and 4.187 kJ/(kg K) the heat
 * capacities of dry fibre (from memory) and of water. Direct steam needs more at the boiler, by the condensate that stays in the stock.
 */
function computedHeat(sheet: Sheet, place: StagePlace, entry: StageEntry): Quantity {
  const where = place.where;
  const defaults =
    entry.heat !== undefined && 'from' in entry.heat
      ? entry.heat
      : { consistency: entry.consistency, from: plainFigure('50', '40', '60', 'C'), to: entry.temperature };
  const consistency = sheet.input({
    id: `${place.id}.heatConsistency`,
    label: 'Consistency where it is heated',
    where,
    unit: '1',
    figure: defaults.consistency,
    allowed: { above: '0', most: '100' },
  });
  const from = sheet.input({
    id: `${place.id}.heatFrom`,
    label: 'Temperature before heating',
    where,
    unit: 'C',
    figure: defaults.from,
    allowed: { least: '0', most: '150' },
  });
  const to = sheet.input({
    id: `${place.id}.heatTo`,
    label: 'Temperature after heating',
    where,
    unit: 'C',
    figure: defaults.to,
    allowed: { least: '0', most: '150' },
  });
  const steam = sheet.input({
    id: `${place.id}.steamFactor`,
    label: 'Boiler heat per unit of heat in the stock',
    where,
    unit: '1',
    figure: plainFigure('1', '1', '1.15', '1', 'practice', '1 for indirect heating; about 1.13 for direct steam'),
    allowed: { least: '1', most: '1.5' },
  });
  const waterPerFibre = consistency.complement().dividedBy(consistency);
  const capacity = constant('0.00135', 'GJ/bdt/C').plus(constant('0.004187', 'GJ/bdt/C').times(waterPerFibre));
  const rise = to.minus(from).within({ least: '0' });
  return sheet.define(`${place.id}.computedHeat`, 'Heat for the stock', 'GJ/bdt', capacity.times(rise).times(steam), {
    where,
    note: 'Heat capacity of fibre and water times the rise in temperature, times the boiler factor.',
  });
}
