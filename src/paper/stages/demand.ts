import { type Quantity, constant } from '../../kernel/expression/quantity.ts';
import type { StageEntry } from '../catalogue.ts';
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
  // A heavier sheet brings more stock in as many more hours, so that as much passes in an hour.
  const service = sheet.graph.later(place.serviceId, '1');
  const feed = sheet.graph.later(place.lineFeedId, 'bdt/t').dividedBy(service);
  const perHour = feed.times(feedMass).times(tonnes).dividedBy(hours);
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
  // A refiner through which nothing goes is off.
  const spread = noLoad.dividedBy(throughput).times(constant('1', 'kWh/h/kW'));
  const idle = throughput.whenAbove(constant('0', 'bdt/h'), spread, constant('0', 'kWh/bdt'));
  return sheet.define(`${place.id}.gross`, 'Refining energy, gross', 'kWh/bdt', net.plus(idle), {
    where,
    note: 'Net energy plus no-load power over the throughput.',
  });
}
