import { type Quantity, constant, total } from '../../kernel/expression/quantity.ts';
import { carbonFactor } from '../carbon-factors.ts';
import { fossilCarbon as fossilFigures } from '../catalogue.ts';
import { type Component, components, fibrous, massOf } from '../components.ts';
import { plainFigure } from '../figure.ts';
import type { Plant } from '../plant.ts';
import type { Residue, ResiduePart } from '../residue.ts';
import { fossilOf } from '../residue-heat.ts';
import type { Residues } from '../residues.ts';
import { type Sheet, notNegative } from '../sheet.ts';
import type { Cause } from './cause.ts';
import { factorInput } from './factor-input.ts';
import { landfillMethane } from './landfill-methane.ts';

interface Sent {
  readonly residue: Residue;
  readonly part: ResiduePart;
}

/** What residues emit where they go: burned here is scope 1, everything sent to others scope 3; biogenic CO2 stands apart. */
export function wasteCauses(sheet: Sheet, plant: Plant, residues: Residues): readonly Cause[] {
  const { route } = plant;
  const sent = residues.streams.flatMap((residue) => residue.parts.map((part): Sent => ({ residue, part })));
  const to = (kind: string): readonly Sent[] => sent.filter(({ part }) => part.destination.kind === kind);
  const methane = landfillMethane(sheet, plant, residues.streams);
  const fossilIds = Object.keys(fossilFigures).map((name) => `fossilCarbon.${name}`);
  const burnedOutside = total(
    to('incineration').map(({ residue, part }) => fossilIn(sheet, residue).times(part.share)),
    'kgCO2e/t',
  );
  const tail = burningTail(sheet, [...to('incineration')]);
  const own = burningTail(sheet, to('own boiler'));
  biogenic(sheet, plant, [...to('incineration'), ...to('own boiler')]);
  const spreading = treated(
    sheet,
    to('spreading'),
    'carbon.spreading',
    'Spreading on land, methane and nitrous oxide',
    'treatment.spreading',
  );
  return [
    {
      id: 'burned',
      label: 'Residues burned here',
      scope: 'scope 1',
      amount: residues.fossilCarbon.plus(own),
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
      amount: burnedOutside.plus(tail),
      factorIds: [...fossilIds, 'carbon.burning'],
      note: 'The fossil part of what is burned elsewhere, with its methane and nitrous oxide.',
    },
    {
      id: 'spreading',
      label: 'Spread on land',
      scope: 'scope 3',
      amount: spreading,
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

function fossilIn(sheet: Sheet, residue: Residue): Quantity {
  const each = components.map((component: Component) =>
    residue.composition[component].times(fossilOf(sheet, component)),
  );
  return total(each, 'tCO2/t').times(constant('1000', 'kgCO2e/tCO2'));
}

function burningTail(sheet: Sheet, sent: readonly Sent[]): Quantity {
  return treated(
    sheet,
    sent,
    'carbon.burning',
    'Burning residues, methane and nitrous oxide',
    'treatment.incineration-ch4-n2o',
  );
}

function treated(sheet: Sheet, sent: readonly Sent[], id: string, label: string, key: string): Quantity {
  const wet = total(
    sent.map(({ part }) => part.wet),
    'wet-t/t',
  );
  return wet.times(factorInput(sheet, id, label, carbonFactor(key)));
}

function haulage(sheet: Sheet, sent: readonly Sent[]): Quantity {
  const road = factorInput(sheet, 'carbon.freight.road', 'Freight by road', carbonFactor('freight.road'));
  const trips = sent
    .filter(({ part }) => part.destination.kind !== 'own boiler')
    .map(({ part }) => {
      const { id, label } = part.destination;
      const distance = sheet.input({
        id: `destination.${id}.distance`,
        label: 'Distance from the mill',
        where: label,
        unit: 'km',
        figure: plainFigure('60', '10', '150', 'km'),
        allowed: notNegative,
      });
      return part.wet.times(distance).times(constant('1', 't-km/km/wet-t'));
    });
  return total(trips, 't-km/t').times(road);
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
  sheet.define(`${route.id}.footprint.biogenic`, 'Biogenic CO2, not summed', 'kgCO2/t', amount, {
    where: route.label,
    note: 'Carbon of burned fibre and dissolved matter, as CO2.',
  });
}
