import { type Quantity, constant } from '../../kernel/expression/quantity.ts';
import type { StageEntry } from '../catalogue.ts';
import { type Figure, plainFigure } from '../figure.ts';
import { type Sheet, notNegative } from '../sheet.ts';
import type { StagePlace } from './stage-place.ts';

/** What a stage needs of the boiler, and what of it stays in the stock as water. Both per bone-dry tonne fed to the stage. */
export interface StageHeat {
  /** GJ/bdt. */
  readonly heat: Quantity;
  /** m3/bdt. */
  readonly condensate: Quantity;
}

const noCondensate = constant('0', 'm3/bdt');

/** Heat of a stage; nothing where stock is not heated above its loop. */
export function heatOf(sheet: Sheet, place: StagePlace, entry: StageEntry): StageHeat {
  const how = place.stage.heat ?? (entry.heat === undefined || 'given' in entry.heat ? 'given' : 'computed');
  if (how === 'computed') return computedHeat(sheet, place, entry);
  const figure = entry.heat !== undefined && 'given' in entry.heat ? entry.heat.given : undefined;
  const spec = {
    id: `${place.id}.heat`,
    label: 'Heat',
    where: place.where,
    unit: 'GJ/bdt',
    figure,
    allowed: notNegative,
  };
  return { heat: sheet.optional(spec), condensate: noCondensate };
}

/**
 * Heating stock at consistency c from T1 to T2: q = [1.35 + 4.187 (1 - c)/c] (T2 - T1) MJ/bdt, with 1.35 and 4.187 kJ/(kg K) the heat
 * capacities of dry fibre (from memory) and of water.
 */
function computedHeat(sheet: Sheet, place: StagePlace, entry: StageEntry): StageHeat {
  const where = place.where;
  const defaults =
    entry.heat !== undefined && 'from' in entry.heat
      ? entry.heat
      : // The loop is as warm as its stages: where nobody says otherwise, stock comes as warm as it leaves.
        { consistency: entry.consistency, from: entry.temperature, to: entry.temperature };
  const input = (name: string, label: string, unit: string, figure: Figure, allowed: object): Quantity =>
    sheet.input({ id: `${place.id}.${name}`, label, where, unit, figure, allowed });
  const upToPressure = { least: '0', most: '150' };
  const consistency = input('heatConsistency', 'Consistency where it is heated', '1', defaults.consistency, {
    above: '0',
    most: '100',
  });
  const from = input('heatFrom', 'Temperature before heating', 'C', defaults.from, upToPressure);
  const to = input('heatTo', 'Temperature after heating', 'C', defaults.to, upToPressure);
  const waterPerFibre = consistency.complement().dividedBy(consistency);
  const capacity = constant('0.00135', 'GJ/bdt/C').plus(constant('0.004187', 'GJ/bdt/C').times(waterPerFibre));
  const rise = to.minus(from).within({ least: '0' });
  const inStock = sheet.define(`${place.id}.stockHeat`, 'Heat taken up by the stock', 'GJ/bdt', capacity.times(rise), {
    where,
    note: 'Heat capacity of fibre and of the water with it, times the rise in temperature.',
  });
  return place.stage.steam === 'direct' ? directSteam(sheet, place, inStock, to) : indirectSteam(sheet, place, inStock);
}

function indirectSteam(sheet: Sheet, place: StagePlace, inStock: Quantity): StageHeat {
  const figure = plainFigure(
    '1',
    '1',
    '1.15',
    '1',
    'practice',
    'losses on the way from the boiler; direct steam has a sum of its own',
  );
  const factor = sheet.input({
    id: `${place.id}.steamFactor`,
    label: 'Boiler heat per unit of heat in the stock',
    where: place.where,
    unit: '1',
    figure,
    allowed: { least: '1', most: '1.5' },
  });
  return {
    heat: defined(sheet, place, inStock.times(factor), 'Heat in the stock times the boiler factor.'),
    condensate: noCondensate,
  };
}

/**
 * Steam blown into stock gives up its heat down to the stock's own temperature and stays there as water, so the boiler must make it anew
 * from cold make-up: boiler heat = q (h_steam - h_make-up)/(h_steam - h_water at T2), about 1.13 q. Enthalpies in GJ per tonne.
 */
function directSteam(sheet: Sheet, place: StagePlace, inStock: Quantity, to: Quantity): StageHeat {
  const where = place.where;
  const steamFigure = plainFigure('2.77', '2.68', '2.8', 'GJ/m3', 'memory', 'saturated steam at 5 to 10 bar');
  const steam = sheet.input({
    id: `${place.id}.steamEnthalpy`,
    label: 'Enthalpy of the steam',
    where,
    unit: 'GJ/m3',
    figure: steamFigure,
    allowed: { above: '0', most: '3.5' },
  });
  const makeUp = sheet.input({
    id: `${place.id}.makeUpTemperature`,
    label: 'Temperature of make-up water',
    where,
    unit: 'C',
    figure: plainFigure('15', '5', '60', 'C'),
    allowed: { least: '0', most: '100' },
  });
  const perDegree = constant('0.004187', 'GJ/m3/C');
  const givenUp = steam.minus(to.times(perDegree)).within({ above: '0' });
  const condensate = sheet.define(
    `${place.id}.condensate`,
    'Steam that condenses in the stock',
    'm3/bdt',
    inStock.dividedBy(givenUp),
    { where, note: 'Heat taken up over what a tonne of steam gives up.' },
  );
  const heat = condensate.times(steam.minus(makeUp.times(perDegree)));
  return {
    heat: defined(
      sheet,
      place,
      heat,
      'Steam that condenses, times what the boiler puts into it from cold make-up water.',
    ),
    condensate,
  };
}

function defined(sheet: Sheet, place: StagePlace, heat: Quantity, note: string): Quantity {
  return sheet.define(`${place.id}.computedHeat`, 'Heat for the stock', 'GJ/bdt', heat, { where: place.where, note });
}
