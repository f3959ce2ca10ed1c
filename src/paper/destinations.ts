import type { Destination, LandfillTax } from '../case/case.ts';
import { type Quantity, constant, total } from '../kernel/expression/quantity.ts';
import { factor } from './catalogue.ts';
import { type Figure, plainFigure } from './figure.ts';
import { type Sheet, notNegative } from './sheet.ts';

/** What a destination asks and pays for one stream, per wet tonne. */
export interface DestinationTerms {
  /** Haulage and gate fee together. */
  readonly charge: Quantity;
  readonly tax: Quantity;
  readonly sale: Quantity;
  /** Of the own boiler when it burns this: useful heat over heat as fired. */
  readonly efficiency: Quantity;
}

/** A stream as a destination sees it. */
export interface DeliveredStream {
  readonly id: string;
  readonly label: string;
}

const perWetTonne = 'EUR/wet-t';
const wetTonne = (value: string, low: string, high: string): Figure => plainFigure(value, low, high, perWetTonne);
const gateFees: Readonly<Record<Destination['kind'], Figure>> = {
  landfill: factor('landfill-gate-fee'),
  incineration: factor('incineration-gate-fee'),
  'own boiler': wetTonne('6', '0', '20'),
  spreading: factor('spreading-gate-fee'),
  sale: wetTonne('0', '0', '30'),
  'gate-fee plant': wetTonne('40', '10', '90'),
};

export function destinationTerms(sheet: Sheet, destination: Destination, stream: DeliveredStream): DestinationTerms {
  const onSite = destination.kind === 'own boiler';
  const input = (name: string, label: string, figure: Figure): Quantity => {
    const allowed = name === 'sale' ? {} : notNegative;
    return sheet.input({
      id: `destination.${destination.id}.${name}`,
      label,
      where: destination.label,
      unit: perWetTonne,
      figure,
      allowed,
    });
  };
  const haulage = input('haulage', 'Haulage', onSite ? wetTonne('2', '0', '6') : factor('haulage'));
  const fee = input('gateFee', onSite ? 'Handling and ash' : 'Gate fee', gateFees[destination.kind]);
  const own = {
    id: `residue.${stream.id}.gateFee.${destination.id}`,
    label: `${stream.label}: gate fee of its own`,
    where: destination.label,
    unit: perWetTonne,
  };
  const asked = sheet.has(own) ? sheet.input(own) : fee;
  return {
    charge: total([haulage, asked], fee.unit),
    tax: destination.kind === 'landfill' ? landfillTax(sheet, stream, input) : constant('0', fee.unit),
    sale:
      destination.kind === 'sale'
        ? input('sale', 'Sale proceeds', wetTonne('60', '0', '150'))
        : constant('0', fee.unit),
    efficiency: onSite ? burningEfficiency(sheet, destination) : constant('0'),
  };
}

/** Mineral and burned-out residues often stand in a lower band of the tax; the case says which, never the program. */
function landfillTax(
  sheet: Sheet,
  stream: DeliveredStream,
  input: (name: string, label: string, figure: Figure) => Quantity,
): Quantity {
  const band: LandfillTax = sheet.case.residues?.find((each) => each.stream === stream.id)?.landfillTax ?? 'standard';
  if (band === 'exempt') return sheet.constant('0', perWetTonne);
  if (band === 'lower') return input('taxLower', 'Landfill tax, lower band', wetTonne('5', '2', '12'));
  return input('tax', 'Landfill tax', factor('landfill-tax'));
}

function burningEfficiency(sheet: Sheet, destination: Destination): Quantity {
  return sheet.input({
    id: `destination.${destination.id}.efficiency`,
    label: 'Efficiency when burning residues',
    where: destination.label,
    unit: '1',
    figure: plainFigure('76', '65', '85', '%'),
    allowed: { above: '0', most: '100' },
  });
}
