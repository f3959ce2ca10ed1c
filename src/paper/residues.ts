import type { Destination } from '../case/case.ts';
import { type Quantity, constant, total } from '../kernel/expression/quantity.ts';
import { residueEntries } from './catalogue.ts';
import { type Flow, addFlows, massOf, noFlow } from './components.ts';
import { destinationTerms } from './destinations.ts';
import type { Effluent } from './effluent.ts';
import { plainFigure } from './figure.ts';
import { balanceOf, destinationsOfYears, openTo } from './outlet-years.ts';
import { heatOfResidue } from './residue-heat.ts';
import type { Plant } from './plant.ts';
import type { Residue } from './residue.ts';
import { type Sheet, fraction } from './sheet.ts';

export interface Residues {
  readonly streams: readonly Residue[];
  /** Useful heat from burning residues in the own boiler, at most what the route needs; below zero where they are too wet. */
  readonly heat: Quantity;
  readonly sales: Quantity;
  /** Fossil carbon of residues burned in the own boiler, kgCO2e/t. */
  readonly fossilCarbon: Quantity;
}

/** Collects what leaves the lines, the broke line, the effluent plant and the boiler, and sends it where the case says. */
export function residuesOf(
  sheet: Sheet,
  plant: Plant,
  effluent: Effluent,
  heatNeeded: Quantity,
  minerals: ReadonlyMap<string, Quantity>,
): Residues {
  const flows = streamFlows(plant, effluent, minerals);
  const streams = [...flows].map(([stream, flow]) => residue(sheet, plant, stream, flow, true));
  const burned = heatOfResidue(sheet, plant, streams);
  const ash = massOf(burned.ash);
  if (ash.operation.op !== 'constant') streams.push(residue(sheet, plant, 'ash', burned.ash, false));
  const heat = sheet.define(
    `${plant.route.id}.heat.fromResidues`,
    'Useful heat from residues',
    'GJ/t',
    burned.heat.lesserOf(heatNeeded),
    {
      where: plant.route.label,
      note: 'Heat of what is burned in the own boiler, at most the heat needed.',
    },
  );
  const sold = streams.flatMap((each) => each.parts.map((part) => part.wet.times(part.terms.sale)));
  return { streams, heat, sales: total(sold, `${sheet.case.currency}/t`), fossilCarbon: burned.fossilCarbon };
}

function streamFlows({ lines }: Plant, effluent: Effluent, minerals: ReadonlyMap<string, Quantity>): Map<string, Flow> {
  const parts = new Map<string, Flow[]>();
  const add = (stream: string, flow: Flow): void => {
    if (massOf(flow).operation.op !== 'constant') parts.set(stream, [...(parts.get(stream) ?? []), flow]);
  };
  for (const line of lines) for (const [stream, flow] of line.rejects) if (stream !== 'effluent') add(stream, flow);
  add('broke', effluent.brokeRejects);
  add('primary', effluent.primarySludge);
  add('biological', effluent.biologicalSludge);
  for (const [stream, mass] of minerals) add(stream, { ...noFlow('bdt/t'), ash: mass });
  // In the order of the program's list, so that every route shows its streams alike.
  return new Map(
    [...residueEntries.keys()].flatMap((stream) =>
      parts.has(stream) ? [[stream, addFlows(parts.get(stream) ?? [], 'bdt/t')] as const] : [],
    ),
  );
}

function residue(sheet: Sheet, plant: Plant, stream: string, composition: Flow, mayBurn: boolean): Residue {
  const entry = residueEntries.get(stream);
  const label = entry?.label ?? stream;
  const id = `${plant.route.id}.residue.${stream}`;
  const where = plant.route.label;
  const dryness = sheet.input({
    id: `residue.${stream}.dryness`,
    label: `${label}: dryness`,
    unit: '1',
    entry: '%',
    figure: entry?.dryness,
    allowed: { above: '0', most: '100' },
  });
  const dry = sheet.define(`${id}.dry`, `${label}, dry`, 'bdt/t', massOf(composition), { where });
  const wet = sheet.define(
    `${id}.wet`,
    `${label}, as hauled`,
    'wet-t/t',
    dry.dividedBy(dryness).times(constant('1', 'wet-t/bdt')),
    { where, note: 'Dry mass over dryness.' },
  );
  const parts = splitOf(sheet, stream, label, mayBurn).map(({ destination, share }) => ({
    destination,
    share,
    terms: destinationTerms(sheet, destination, { id: stream, label }),
    wet: sheet.define(
      `${id}.wet.${destination.id}`,
      `${label}, to ${destination.label.toLowerCase()}`,
      'wet-t/t',
      wet.times(share),
      {
        where,
        note: 'The stream times the share that goes there.',
      },
    ),
  }));
  const money = `${sheet.case.currency}/t`;
  const polymer = {
    id: `residue.${stream}.polymer`,
    label: `${label}: press polymer`,
    unit: 'kg/bdt',
    figure: entry?.polymer,
    allowed: { least: '0' },
  } as const;
  return {
    stream,
    label,
    composition,
    dryness,
    dry,
    wet,
    parts,
    // Haulage, gate fees and taxes are charged on wet tonnes, so the wet mass stands here and the dry mass nowhere.
    cost: total(
      parts.map((part) => part.wet.times(part.terms.charge)),
      money,
    ),
    tax: total(
      parts.map((part) => part.wet.times(part.terms.tax)),
      money,
    ),
    polymer: sheet.has(polymer) ? dry.times(sheet.input(polymer)) : constant('0', 'kg/t'),
  };
}

interface Part {
  readonly destination: Destination;
  readonly share: Quantity;
}

// A destination that takes the stream in some year of the investment plan, and none of it today.
const notYet = plainFigure('0', '0', '0', '%', 'none', 'nothing goes there today');

/** Shares of a stream over the destinations of the case; one of them takes what the others leave. */
function splitOf(sheet: Sheet, stream: string, label: string, mayBurn: boolean): readonly Part[] {
  const open = openTo(sheet.case, mayBurn);
  const main = balanceOf(stream, open);
  if (main === undefined) {
    const path = `a destination that takes ${label.toLowerCase()}`;
    if (!sheet.problems.some((problem) => problem.kind === 'missing' && problem.path === path))
      sheet.problems.push({ kind: 'missing', path });
    return [];
  }
  const later = destinationsOfYears(sheet.case, stream, mayBurn);
  const others = open.flatMap((destination): Part[] => {
    const spec = {
      id: `residue.${stream}.to.${destination.id}`,
      label: `${label}: share to ${destination.label.toLowerCase()}`,
      unit: '1',
      entry: '%',
      allowed: fraction,
    };
    if (destination === main || !(sheet.has(spec) || later.has(destination.id))) return [];
    const share = sheet.has(spec) ? sheet.input(spec) : sheet.input({ ...spec, figure: notYet });
    return [{ destination, share }];
  });
  const taken = total(
    others.map((part) => part.share),
    '1',
  );
  return [
    { destination: main, share: others.length === 0 ? constant('1') : taken.complement().within({ least: '0' }) },
    ...others,
  ];
}
