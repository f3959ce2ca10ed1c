import { type Quantity, constant, total } from '../kernel/expression/quantity.ts';
import { chemicalEntries, machineDoses } from './catalogue.ts';
import type { Plant } from './plant.ts';
import { type Sheet, notNegative } from './sheet.ts';

/** One chemical's use in a route. */
export interface ChemicalUse {
  readonly id: string;
  readonly label: string;
  /** Active substance, kg/t. */
  readonly amount: Quantity;
  /** Money per kg active. */
  readonly price: Quantity;
  /** The input that sets the price. */
  readonly priceInput: string;
  /** Water of its solution, m3/t. */
  readonly water: Quantity;
}

/** Doses of each chemical, kg/t; a chemical may be dosed in many places. */
export type Doses = ReadonlyMap<string, readonly Quantity[]>;

/** What stages dose per bdt that enters them, and the machine per gross tonne. */
export function dosesOf(sheet: Sheet, { route, machine, lines }: Plant): Doses {
  const doses = new Map<string, Quantity[]>();
  const add = (chemical: string, amount: Quantity): void => {
    doses.set(chemical, [...(doses.get(chemical) ?? []), amount]);
  };
  for (const line of lines) {
    for (const stage of line.stages) {
      for (const { chemical, dose } of stage.doses) add(chemical, line.feed.times(stage.feedMass).times(dose));
    }
  }
  for (const chemical of route.machineChemicals) {
    const dose = {
      id: `${route.id}.machine.dose.${chemical}`,
      label: `${labelOf(sheet, chemical)}, active`,
      where: `${route.label}, machine`,
      unit: 'kg/gt',
      figure: machineDoses.get(chemical),
      allowed: notNegative,
    };
    add(chemical, machine.grossTonnes.times(sheet.input(dose)));
  }
  return doses;
}

/** Every chemical with a dose somewhere, the polymer of the sludge presses among them. */
export function chemicalUses(
  sheet: Sheet,
  plant: Plant,
  doses: Doses,
  sludgePolymer: Quantity,
): readonly ChemicalUse[] {
  const id = 'sludge-polymer';
  const pressed = sludgePolymer.operation.op === 'constant' ? [] : [sludgePolymer];
  const all = new Map([
    ...doses,
    ...(pressed.length === 0 ? [] : [[id, [...(doses.get(id) ?? []), ...pressed]] as const]),
  ]);
  return [...all].map(([chemical, amounts]) => chemicalUse(sheet, plant, chemical, total(amounts, 'kg/t')));
}

/** Dry mass that chemicals leave in a residue stream, as minerals, bdt/t: talc, filler and silicate where the case says they end there. */
export function mineralsInto(sheet: Sheet, doses: Doses): ReadonlyMap<string, Quantity> {
  const ends = sheet.case.chemicals.flatMap(({ id, endsIn }) => (endsIn === undefined ? [] : [{ id, endsIn }]));
  const streams = [...new Set(ends.map(({ endsIn }) => endsIn))];
  return new Map(
    streams.map((stream) => {
      const amounts = ends.filter(({ endsIn }) => endsIn === stream).flatMap(({ id }) => doses.get(id) ?? []);
      return [stream, total(amounts, 'kg/t').times(constant('0.001', 'bdt/kg'))];
    }),
  );
}

function chemicalUse(sheet: Sheet, { route }: Plant, id: string, used: Quantity): ChemicalUse {
  const entry = chemicalEntries.get(id);
  const label = labelOf(sheet, id);
  const amount = sheet.define(`${route.id}.chemical.${id}`, `${label}, active`, 'kg/t', used, {
    where: route.label,
    note: 'All doses of it over all lines and the machine.',
  });
  const strength = {
    id: `chemical.${id}.strength`,
    label: `${label}: strength of the solution`,
    unit: '1',
    entry: '%',
    figure: entry?.strength,
    allowed: { above: '0', most: '100' },
  } as const;
  const active = sheet.has(strength) ? sheet.input(strength) : constant('1');
  const water = amount.times(active.complement().dividedBy(active)).times(constant('0.001', 'm3/kg'));
  return { id, label, amount, ...priceOf(sheet, id, active), water };
}

/** Money per kg active: as quoted, or from the price of the solution and its strength where somebody gives that. */
function priceOf(sheet: Sheet, id: string, active: Quantity): Pick<ChemicalUse, 'price' | 'priceInput'> {
  const label = labelOf(sheet, id);
  const solution = {
    id: `chemical.${id}.solutionPrice`,
    label: `${label}, solution as delivered`,
    unit: 'EUR/kg',
    allowed: notNegative,
  };
  if (sheet.has(solution)) return { price: sheet.input(solution).dividedBy(active), priceInput: solution.id };
  const figure = chemicalEntries.get(id)?.price;
  const quoted = {
    id: `chemical.${id}.price`,
    label: `${label}, active`,
    unit: 'EUR/kg',
    figure,
    allowed: notNegative,
  };
  return { price: sheet.input(quoted), priceInput: quoted.id };
}

function labelOf(sheet: Sheet, id: string): string {
  return chemicalEntries.get(id)?.label ?? sheet.case.chemicals.find((chemical) => chemical.id === id)?.label ?? id;
}
