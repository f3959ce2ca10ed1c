import { type Quantity, total } from '../kernel/expression/quantity.ts';
import type { Plant } from './plant.ts';
import type { Sheet } from './sheet.ts';

/** Electricity by use, kWh/t. */
export interface Electricity {
  readonly preparation: Quantity;
  readonly refining: Quantity;
  readonly machine: Quantity;
}

export function electricityUse(sheet: Sheet, plant: Plant): Electricity {
  const { route, machine, lines } = plant;
  const at = (kind: 'preparation' | 'refining') =>
    total(
      lines.flatMap((line) =>
        line.stages
          .filter((stage) => (stage.kind === 'refiner') === (kind === 'refining'))
          .map((stage) =>
            named(sheet, stage.id, line.label, stage.label, line.feed.times(stage.feedMass).times(stage.electricity)),
          ),
      ),
      'kWh/t',
    );
  const define = (name: string, label: string, quantity: Quantity, note: string) =>
    sheet.define(`${route.id}.electricity.${name}`, label, 'kWh/t', quantity, { where: route.label, note });
  const perGross = machine.input('electricityPerGrossTonne', 'Machine electricity', 'kWh/gt');
  const brokeDemand = machine.input('brokeElectricity', 'Broke repulping electricity', 'kWh/bdt');
  const preparation = define(
    'preparation',
    'Electricity, preparing stock',
    at('preparation'),
    'All stages but refiners, over all lines.',
  );
  const refining = define(
    'refining',
    'Electricity, refining',
    at('refining'),
    'All refiners. A recovered line has none unless one is put in.',
  );
  const ofMachine = define(
    'machine',
    'Electricity, paper machine',
    machine.grossTonnes.times(perGross).plus(machine.broke.times(brokeDemand)),
    'The machine per gross tonne, and broke repulping.',
  );
  return { preparation, refining, machine: ofMachine };
}

function named(sheet: Sheet, stageId: string, line: string, stage: string, quantity: Quantity): Quantity {
  return sheet.define(`${stageId}.electricityUse`, 'Electricity used', 'kWh/t', quantity, {
    where: `${line}, ${stage}`,
    note: 'Stock that enters the stage times its demand.',
  });
}
