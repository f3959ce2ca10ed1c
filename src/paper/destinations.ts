import type { Destination } from '../case/case.ts';
import { type Quantity, constant, total } from '../kernel/expression/quantity.ts';
import { factor } from './catalogue.ts';
import { type Figure, plainFigure } from './figure.ts';
import { type Sheet, notNegative } from './sheet.ts';

/** What a destination asks and pays, per wet tonne. */
export interface DestinationTerms {
  /** Haulage and gate fee together. */
  readonly charge: Quantity;
  readonly tax: Quantity;
  readonly sale: Quantity;
  /** Of the own boiler when it burns this: useful heat over heat as fired. */
  readonly efficiency: Quantity;
}

const free = plainFigure('0', '0', '30', 'EUR/wet-t');
const gateFees: Readonly<Record<Destination['kind'], Figure>> = {
  landfill: factor('landfill-gate-fee'),
  incineration: factor('incineration-gate-fee'),
  'own boiler': plainFigure('6', '0', '20', 'EUR/wet-t'),
  spreading: factor('spreading-gate-fee'),
  sale: free,
  'gate-fee plant': plainFigure('40', '10', '90', 'EUR/wet-t'),
};

export function destinationTerms(sheet: Sheet, destination: Destination): DestinationTerms {
  const id = `destination.${destination.id}`;
  const perWetTonne = (name: string, label: string, figure: Figure): Quantity =>
    sheet.input({
      id: `${id}.${name}`,
      label,
      where: destination.label,
      unit: 'EUR/wet-t',
      figure,
      allowed: name === 'sale' ? {} : notNegative,
    });
  const onSite = destination.kind === 'own boiler';
  const haulage = perWetTonne(
    'haulage',
    'Haulage',
    onSite ? plainFigure('2', '0', '6', 'EUR/wet-t') : factor('haulage'),
  );
  const fee = perWetTonne('gateFee', onSite ? 'Handling and ash' : 'Gate fee', gateFees[destination.kind]);
  const tax =
    destination.kind === 'landfill'
      ? perWetTonne('tax', 'Landfill tax', factor('landfill-tax'))
      : constant('0', fee.unit);
  const sale =
    destination.kind === 'sale'
      ? perWetTonne('sale', 'Sale proceeds', plainFigure('60', '0', '150', 'EUR/wet-t'))
      : constant('0', fee.unit);
  const efficiency = onSite
    ? sheet.input({
        id: `${id}.efficiency`,
        label: 'Efficiency when burning residues',
        where: destination.label,
        unit: '1',
        figure: plainFigure('76', '65', '85', '%'),
        allowed: { above: '0', most: '100' },
      })
    : constant('0');
  return { charge: total([haulage, fee], fee.unit), tax, sale, efficiency };
}
