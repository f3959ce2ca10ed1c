import type { Additive, Case, Charge, Destination, GivenInput, Line, Route } from '../../src/case/case.ts';
import { machineEntries } from '../../src/paper/catalogue.ts';
import { Dice } from './dice.ts';
import { randomMaterial } from './random-material.ts';
import { randomTrain } from './random-train.ts';

/** How large a random case grows. */
export interface Size {
  readonly lines: number;
  readonly stages: number;
}

/** A case of two routes with random materials, recipes, trains, machine, additives, charges and destinations; the same for one seed. */
export function randomCase(seed: number, size: Size = { lines: 2, stages: 5 }): Case {
  const dice = new Dice(seed);
  const materials = ['one', 'two', 'three', 'four'].slice(0, dice.whole(2, 4)).map((id) => randomMaterial(dice, id));
  const ids = materials.map(({ material }) => material.id);
  const inputs: Record<string, GivenInput> = Object.assign(
    {},
    ...materials.map((each) => each.inputs),
  ) as object as Record<string, GivenInput>;
  const extra = dice.some(extraDestinations, 0.6);
  for (const { id } of extra)
    for (const stream of ['coarse', 'broke', 'primary'])
      inputs[`residue.${stream}.to.${id}`] = { value: dice.digits(0, 30), unit: '%' };
  const routes = ['base', 'other'].map((id) => randomRoute(dice, id, ids, size, inputs));
  return {
    title: `Random case ${String(seed)}`,
    note: '',
    currency: 'EUR',
    priceYear: '2026',
    product: { name: 'Product', machine: dice.pick([...machineEntries.keys()]) },
    materials: materials.map(({ material }) => material),
    chemicals: [{ id: 'talc', label: 'Talc', endsIn: 'coarse' }],
    residues: [{ stream: 'coarse', landfillTax: dice.pick(['standard', 'lower', 'exempt']) }],
    destinations: [...usualDestinations, ...extra],
    routes,
    compare: { base: 'base', with: 'other' },
    inputs,
  };
}

const usualDestinations: readonly Destination[] = [
  { id: 'landfill', label: 'Landfill', kind: 'landfill' },
  { id: 'incineration', label: 'Incineration', kind: 'incineration' },
  { id: 'spreading', label: 'Spreading', kind: 'spreading' },
];
const extraDestinations: readonly Destination[] = [
  { id: 'boiler', label: 'Own boiler', kind: 'own boiler' },
  { id: 'merchant', label: 'Merchant', kind: 'sale' },
  { id: 'plant', label: 'Plant', kind: 'gate-fee plant' },
];

/** Notes in `inputs` what the trains need to be given. */
function randomRoute(
  dice: Dice,
  id: string,
  materials: readonly string[],
  size: Size,
  inputs: Record<string, GivenInput>,
): Route {
  const lines = Array.from({ length: dice.whole(1, size.lines) }, (_, at): Line => {
    const lineId = `line${String(at + 1)}`;
    const train = randomTrain(dice, `${id}.${lineId}`, size.stages);
    Object.assign(inputs, train.inputs);
    const [first, ...others] = shuffled(dice, materials).slice(0, dice.whole(1, 3));
    const recipe = [first ?? 'one', ...others].map((material) => ({ material }));
    return { id: lineId, label: `Line ${String(at + 1)}`, recipe, stages: train.stages };
  });
  return {
    id,
    label: `Route ${id}`,
    ...(dice.chance(0.5) ? { machine: dice.pick([...machineEntries.keys()]) } : {}),
    lines,
    balance: dice.pick(lines).id,
    additives: dice.some(additives, 0.6),
    machineChemicals: dice.some(['retention', 'coagulant'], 0.5),
    water: dice.pick(['fresh water given', 'effluent given']),
    heat: dice.pick(['own boiler', 'bought heat']),
    capital: dice.pick(['annual charge', 'none']),
    charges: dice.some(charges, 0.5),
  };
}

const additives: readonly Additive[] = [
  { id: 'filler', label: 'Filler', place: 'wet end', kind: 'mineral' },
  { id: 'starch', label: 'Starch', place: 'wet end', kind: 'organic' },
  { id: 'size', label: 'Surface size', place: 'surface', kind: 'organic' },
  { id: 'coating', label: 'Coating', place: 'surface', kind: 'mineral' },
];
const charges: readonly Charge[] = [
  { id: 'selling', label: 'Selling', behaviour: 'per tonne', avoidable: true, nature: 'market' },
  { id: 'shift', label: 'Shift', behaviour: 'per hour', avoidable: true, nature: 'technical' },
  { id: 'levy', label: 'Levy', behaviour: 'per year', avoidable: false, nature: 'policy' },
];

function shuffled(dice: Dice, items: readonly string[]): string[] {
  return items
    .map((item) => ({ item, at: dice.between(0, 1) }))
    .sort((left, right) => left.at - right.at)
    .map(({ item }) => item);
}
