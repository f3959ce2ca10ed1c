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

/** What comes in and leaves beside fresh water and effluent, m3/t. */
interface Beside {
  readonly withFibre: Quantity;
  /** Solutions, surface size and condensed steam. */
  readonly withOthers: Quantity;
  readonly evaporated: Quantity;
  readonly inResidues: Quantity;
  readonly inProduct: Quantity;
}

const perDry = constant('1', 'm3/bdt');
const forTheService = 'What is given for a tonne made, for the tonnes of the same service.';

/**
 * fresh + moisture of materials + water in solutions = effluent + evaporated + water in residues + water in the product. One of fresh
 * water and effluent is given, the other closes the balance. Steam blown into stock condenses there and comes in too. Water that wet-end
 * starch and filler slurries bring is part of fresh water.
 */
export function waterBalance(sheet: Sheet, plant: Plant, chemicals: readonly ChemicalUse[], residues: Residues): Water {
  const { route, machine } = plant;
  const where = route.label;
  const beside = besideOf(sheet, plant, chemicals, residues);
  const comesIn = sheet.define(
    `${route.id}.water.withMaterials`,
    'Water that comes with materials',
    'm3/t',
    beside.withFibre.plus(beside.withOthers),
    {
      where,
      note: 'Moisture of bought fibre, chemical solutions, surface size and condensed steam.',
    },
  );
  const leaves = sheet.define(
    `${route.id}.water.elsewhere`,
    'Water that leaves otherwise than as effluent',
    'm3/t',
    total([beside.evaporated, beside.inResidues, beside.inProduct], 'm3/t'),
    { where, note: 'Dryers, cooling, residues and the product itself.' },
  );
  if (route.water === 'effluent given') {
    const id = `${route.id}.effluent`;
    const perTonne = sheet.input({ id, label: 'Effluent', where, unit: 'm3/t', allowed: notNegative });
    const effluent = sheet.define(`${route.id}.water.effluent`, 'Effluent', 'm3/t', perTonne.times(machine.service), {
      where,
      note: forTheService,
    });
    const note = 'What the balance asks for.';
    const fresh = sheet.define(`${route.id}.water.fresh`, 'Fresh water', 'm3/t', effluent.plus(leaves).minus(comesIn), {
      where,
      note,
    });
    return checked(sheet, plant, { fresh, effluent, givenInput: id }, beside, residues);
  }
  const perTonne = machine.input('freshWater', 'Fresh water', 'm3/t');
  const fresh = sheet.define(`${route.id}.water.fresh`, 'Fresh water', 'm3/t', perTonne.times(machine.service), {
    where,
    note: forTheService,
  });
  const note = 'Water in, less evaporation, residues and product.';
  const effluent = sheet.define(`${route.id}.water.effluent`, 'Effluent', 'm3/t', fresh.plus(comesIn).minus(leaves), {
    where,
    note,
  });
  return checked(sheet, plant, { fresh, effluent, givenInput: `${route.id}.machine.freshWater` }, beside, residues);
}

function besideOf(sheet: Sheet, plant: Plant, chemicals: readonly ChemicalUse[], residues: Residues): Beside {
  const { machine, mill, lines } = plant;
  const moist = lines.flatMap((line) =>
    line.grades.map(({ material, share }) => {
      const moisture = mill.purchases.get(material)?.moisture ?? constant('0');
      return line.feed.times(share).times(moisture.dividedBy(moisture.complement())).times(perDry);
    }),
  );
  const condensed = lines.flatMap((line) =>
    line.stages.map((stage) => line.feed.times(stage.feedMass).times(stage.condensate)),
  );
  const figure = plainFigure('0.15', '0.05', '0.5', 'm3/t');
  const cooling = machine
    .input('coolingLoss', 'Water evaporated in cooling and building', 'm3/t', { figure })
    .times(machine.service);
  const hauled = residues.streams.map((each) =>
    each.wet.times(constant('1', 'm3/wet-t')).minus(each.dry.times(perDry)),
  );
  return {
    withFibre: total(moist, 'm3/t'),
    withOthers: total([...condensed, ...chemicals.map((use) => use.water), machine.sizeWater], 'm3/t'),
    evaporated: total([machine.dryerWater, cooling], 'm3/t'),
    inResidues: total(hauled, 'm3/t'),
    inProduct: mill.productMoisture.times(machine.service).times(constant('1', 'm3/t')),
  };
}

/**
 * The balance drawn up a second time from other figures: the water of bought fibre from the masses received, that of residues from their
 * dryness, that of the product from its dry mass.
 */
function checked(
  sheet: Sheet,
  { route, lines, mill, machine }: Plant,
  water: Water,
  beside: Beside,
  residues: Residues,
): Water {
  const used = sheet.case.materials.filter((material) =>
    lines.some((line) => line.grades.some((grade) => grade.material === material.id)),
  );
  const received = used.map((material) => {
    const mass = sheet.graph.later(`${route.id}.received.${material.id}`, 't-ar/t').times(constant('1', 'm3/t-ar'));
    return mass.minus(sheet.graph.later(`${route.id}.bought.${material.id}`, 'bdt/t').times(perDry));
  });
  const hauled = residues.streams.map((each) =>
    each.dry.times(each.dryness.complement().dividedBy(each.dryness)).times(perDry),
  );
  const product = constant('1', 'm3/t').minus(mill.dryProduct.times(perDry)).times(machine.service);
  const comesIn = total([water.fresh, ...received, beside.withOthers], 'm3/t');
  const leaves = total([water.effluent, beside.evaporated, ...hauled, product], 'm3/t');
  sheet.define(`${route.id}.water.closure`, 'Water unaccounted for', 'm3/t', comesIn.minus(leaves), {
    where: route.label,
    note: 'Water in less water out, from masses received and dryness: nothing, if water closes.',
  });
  return water;
}
