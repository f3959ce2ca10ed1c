import { type Quantity, constant, total } from '../../kernel/expression/quantity.ts';
import { carbonFactor } from '../carbon-factors.ts';
import { fossilCarbon as fossilFigures } from '../catalogue.ts';
import { fibrous, massOf } from '../components.ts';
import { plainFigure } from '../figure.ts';
import type { Plant } from '../plant.ts';
import type { Residues } from '../residues.ts';
import type { Sheet } from '../sheet.ts';
import { basisOf } from './basis.ts';
import type { Cause } from './cause.ts';
import { factorInput } from './factor-input.ts';
import { landfillMethane } from './landfill-methane.ts';
import { type Sent, burningTail, fossilBurned, haulage, sentOf, sentTo, spreading } from './sent-residues.ts';

/** What residues emit where they go: burned here is scope 1, everything sent to others scope 3; biogenic CO2 stands apart. */
export function wasteCauses(sheet: Sheet, plant: Plant, residues: Residues): readonly Cause[] {
  const { route } = plant;
  const sent = sentOf(residues.streams);
  const methane = landfillMethane(sheet, plant, residues.streams);
  const fossilIds = Object.keys(fossilFigures).map((name) => `fossilCarbon.${name}`);
  const outside = sentTo(sent, 'incineration');
  const here = sentTo(sent, 'own boiler');
  biogenic(sheet, plant, [...outside, ...here]);
  return [
    {
      id: 'burned',
      label: 'Residues burned here',
      scope: 'scope 1',
      amount: residues.fossilCarbon.plus(burningTail(sheet, here)),
      factorIds: [...fossilIds, 'carbon.burning'],
      note: 'The fossil part of what the own boiler burns, with its methane and nitrous oxide.',
    },
    {
      id: 'ownLandfill',
      label: 'Own landfill, methane',
      scope: 'scope 1',
      amount: methane.own,
      factorIds: methane.factorIds,
      note: 'Methane of the mill\u2019s own landfill, all time.',
    },
    {
      id: 'landfill',
      label: 'Landfill methane',
      scope: 'scope 3',
      amount: methane.others,
      factorIds: methane.factorIds,
      note: 'Methane of what is sent to others\u2019 landfill, all time (scope 3, category 5).',
    },
    {
      id: 'incineration',
      label: 'Burned elsewhere',
      scope: 'scope 3',
      amount: fossilBurned(sheet, outside).plus(burningTail(sheet, outside)),
      factorIds: [...fossilIds, 'carbon.burning'],
      note: 'The fossil part of what is burned elsewhere, with its methane and nitrous oxide.',
    },
    {
      id: 'spreading',
      label: 'Spread on land',
      scope: 'scope 3',
      amount: spreading(sheet, sent),
      factorIds: ['carbon.spreading'],
      note: 'Methane and nitrous oxide of spreading.',
    },
    {
      id: 'wasteFreight',
      label: 'Residues, haulage',
      scope: 'scope 3',
      amount: haulage(sheet, sent),
      factorIds: ['carbon.freight.road'],
      note: `Wet tonnes of ${route.label} times distance, by road.`,
    },
  ];
}

/** CO2 of burned fibre: it stands beside the scopes and in no sum. */
function biogenic(sheet: Sheet, { route }: Plant, burned: readonly Sent[]): void {
  const carbon = sheet.input({
    id: 'carbon.inFibre',
    label: 'Carbon in dry fibre',
    unit: 'tC/bdt',
    figure: plainFigure('0.44', '0.4', '0.5', 'tC/bdt', 'memory'),
    allowed: { least: '0', most: '1' },
  });
  const matter = total(
    burned.map(({ residue, part }) => massOf(residue.composition, [...fibrous, 'dissolved']).times(part.share)),
    'bdt/t',
  );
  const amount = matter
    .times(carbon)
    .times(constant('44', 'kgCO2/tC'))
    .times(constant('1000'))
    .dividedBy(constant('12'));
  const fromFuel = route.heat === 'own boiler' ? biogenicFuel(sheet, route.id) : constant('0', 'kgCO2/t');
  sheet.define(`${route.id}.footprint.biogenic`, 'Biogenic CO2, not summed', 'kgCO2/t', amount.plus(fromFuel), {
    where: route.label,
    note: 'Carbon of burned fibre and dissolved matter, and of biogenic fuel, as CO2.',
  });
}

function biogenicFuel(sheet: Sheet, routeId: string): Quantity {
  const figure = carbonFactor(`fuel.${basisOf(sheet.case.basis).fuel}.biogenic`);
  const factor = factorInput(sheet, 'carbon.fuelBiogenic', 'Biogenic CO2 of the boiler fuel', figure);
  return sheet.graph.later(`${routeId}.fuel`, 'GJ/t').times(factor).times(constant('1', 'kgCO2/kgCO2e'));
}
