import { type Quantity, total } from '../kernel/expression/quantity.ts';
import type { LineResult } from './line.ts';
import type { Plant } from './plant.ts';
import { type Sheet, notNegative } from './sheet.ts';
import type { StageResult } from './stages/stage.ts';

/** Heat by use, GJ/t. */
export interface Heat {
  readonly stock: Quantity;
  readonly dryers: Quantity;
  readonly other: Quantity;
  readonly total: Quantity;
}

export function heatUse(sheet: Sheet, { route, machine, lines }: Plant): Heat {
  const where = route.label;
  const ofStages = lines.flatMap((line) => line.stages.map((stage) => stageHeat(sheet, line, stage)));
  const define = (name: string, label: string, quantity: Quantity, note: string) =>
    sheet.define(`${route.id}.heat.${name}`, label, 'GJ/t', quantity, { where, note });
  const stock = define('stock', 'Heat, heating stock', total(ofStages, 'GJ/t'), 'All stages where stock is heated.');
  const perWater = machine.input('heatPerTonneWater', 'Dryer heat per cubic metre of water evaporated', 'GJ/m3');
  const dryers = define(
    'dryers',
    'Heat, dryers',
    machine.dryerWater.times(perWater),
    'Water evaporated times heat per cubic metre.',
  );
  const perGross = machine.input('otherHeatPerGrossTonne', 'Other machine heat', 'GJ/gt');
  // The loop is warm already: heating it is one line, not one per stage (5 K at 1 % consistency in every stage would be 2 GJ/t).
  const loop = sheet.optional({
    id: `${route.id}.loopHeat`,
    label: 'Heat to keep the loop warm',
    where,
    unit: 'GJ/t',
    allowed: notNegative,
  });
  const other = define(
    'other',
    'Heat, other',
    machine.grossTonnes.times(perGross).plus(loop),
    'Buildings, ventilation, steam boxes, and the loop.',
  );
  return {
    stock,
    dryers,
    other,
    total: define('total', 'Heat needed', total([stock, dryers, other], 'GJ/t'), 'Stock, dryers and other.'),
  };
}

function stageHeat(sheet: Sheet, line: LineResult, stage: StageResult): Quantity {
  const where = `${line.label}, ${stage.label}`;
  const used = line.feed.times(stage.feedMass).times(stage.heat);
  return sheet.define(`${stage.id}.heatUse`, 'Heat used', 'GJ/t', used, {
    where,
    note: 'Stock that enters the stage times its demand.',
  });
}
