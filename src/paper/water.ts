import { type Quantity, constant, total } from '../kernel/expression/quantity.ts';
import type { ChemicalUse } from './chemicals.ts';
import { plainFigure } from './figure.ts';
import type { Plant } from './plant.ts';
import type { Residues } from './residues.ts';
import { type Sheet, notNegative } from './sheet.ts';

/** Water per tonne of product, m3/t (1 m3 = 1 t). */
export interface Water {
  readonly fresh: Quantity;
  readonly effluent: Quantity;
  /** The id of the one that is given. */
  readonly givenInput: string;
}

/**
 * fresh + moisture of materials + water in solutions = effluent + evaporated + water in residues + water in the product. One of fresh
 * water and effluent is given, the other closes the balance. Steam blown into stock condenses there and comes in too.
 */
export function waterBalance(sheet: Sheet, plant: Plant, chemicals: readonly ChemicalUse[], residues: Residues): Water {
  const { route, machine, mill } = plant;
  const where = route.label;
  const perDry = constant('1', 'm3/bdt');
  const bought = plant.lines.flatMap((line) =>
    line.grades.map(({ material, share }) => {
      const moisture = mill.purchases.get(material)?.moisture ?? constant('0');
      return line.feed.times(share).times(moisture.dividedBy(moisture.complement())).times(perDry);
    }),
  );
  const condensed = plant.lines.flatMap((line) =>
    line.stages.map((stage) => line.feed.times(stage.feedMass).times(stage.condensate)),
  );
  const comesIn = sheet.define(
    `${route.id}.water.withMaterials`,
    'Water that comes with materials',
    'm3/t',
    total([...bought, ...condensed, ...chemicals.map((use) => use.water), machine.sizeWater], 'm3/t'),
    { where, note: 'Moisture of bought fibre, chemical solutions and surface size.' },
  );
  const cooling = machine.input('coolingLoss', 'Water evaporated in cooling and building', 'm3/t', {
    figure: plainFigure('0.15', '0.05', '0.5', 'm3/t'),
  });
  const inResidues = total(
    residues.streams.map((each) => each.wet.times(constant('1', 'm3/wet-t')).minus(each.dry.times(perDry))),
    'm3/t',
  );
  const inProduct = mill.productMoisture.times(machine.service).times(constant('1', 'm3/t'));
  const leaves = sheet.define(
    `${route.id}.water.elsewhere`,
    'Water that leaves otherwise than as effluent',
    'm3/t',
    total([machine.dryerWater, cooling, inResidues, inProduct], 'm3/t'),
    { where, note: 'Dryers, cooling, residues and the product itself.' },
  );
  if (route.water === 'effluent given') {
    const effluent = sheet.input({
      id: `${route.id}.effluent`,
      label: 'Effluent',
      where,
      unit: 'm3/t',
      allowed: notNegative,
    });
    const fresh = sheet.define(`${route.id}.water.fresh`, 'Fresh water', 'm3/t', effluent.plus(leaves).minus(comesIn), {
      where,
      note: 'What the balance asks for.',
    });
    return closed(sheet, plant, { fresh, effluent, givenInput: `${route.id}.effluent` }, comesIn, leaves);
  }
  const fresh = machine.input('freshWater', 'Fresh water', 'm3/t');
  const effluent = sheet.define(`${route.id}.water.effluent`, 'Effluent', 'm3/t', fresh.plus(comesIn).minus(leaves), {
    where,
    note: 'Water in, less evaporation, residues and product.',
  });
  return closed(sheet, plant, { fresh, effluent, givenInput: `${route.id}.machine.freshWater` }, comesIn, leaves);
}

function closed(sheet: Sheet, { route }: Plant, water: Water, comesIn: Quantity, leaves: Quantity): Water {
  const apart = water.fresh.plus(comesIn).minus(water.effluent).minus(leaves);
  const note = 'Water in less water out: nothing, if water closes.';
  sheet.define(`${route.id}.water.closure`, 'Water unaccounted for', 'm3/t', apart, { where: route.label, note });
  return water;
}
