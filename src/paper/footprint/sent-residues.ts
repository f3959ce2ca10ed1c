import { type Quantity, constant, total } from '../../kernel/expression/quantity.ts';
import { carbonFactor } from '../carbon-factors.ts';
import { type Component, components } from '../components.ts';
import { plainFigure } from '../figure.ts';
import type { Residue, ResiduePart } from '../residue.ts';
import { fossilOf } from '../residue-heat.ts';
import { type Sheet, notNegative } from '../sheet.ts';
import { factorInput } from './factor-input.ts';

/** A part of a stream on its way to one destination. */
export interface Sent {
  readonly residue: Residue;
  readonly part: ResiduePart;
}

export function sentOf(streams: readonly Residue[]): readonly Sent[] {
  return streams.flatMap((residue) => residue.parts.map((part): Sent => ({ residue, part })));
}

export function sentTo(sent: readonly Sent[], ...kinds: readonly string[]): readonly Sent[] {
  return sent.filter(({ part }) => kinds.includes(part.destination.kind));
}

/** Fossil carbon dioxide of what is burned, kgCO2e/t. */
export function fossilBurned(sheet: Sheet, sent: readonly Sent[]): Quantity {
  return total(
    sent.map(({ residue, part }) => fossilIn(sheet, residue).times(part.share)),
    'kgCO2e/t',
  );
}

/** Fossil carbon dioxide of the whole of a stream when it is burned, kgCO2e/t. */
export function fossilIn(sheet: Sheet, residue: Residue): Quantity {
  const each = components.map((component: Component) =>
    residue.composition[component].times(fossilOf(sheet, component)),
  );
  return total(each, 'tCO2/t').times(constant('1000', 'kgCO2e/tCO2'));
}

export function burningTail(sheet: Sheet, sent: readonly Sent[]): Quantity {
  return treated(
    sheet,
    sent,
    'carbon.burning',
    'Burning residues, methane and nitrous oxide',
    'treatment.incineration-ch4-n2o',
  );
}

export function spreading(sheet: Sheet, sent: readonly Sent[]): Quantity {
  return treated(
    sheet,
    sentTo(sent, 'spreading'),
    'carbon.spreading',
    'Spreading on land, methane and nitrous oxide',
    'treatment.spreading',
  );
}

function treated(sheet: Sheet, sent: readonly Sent[], id: string, label: string, key: string): Quantity {
  const wet = total(
    sent.map(({ part }) => part.wet),
    'wet-t/t',
  );
  return wet.times(factorInput(sheet, id, label, carbonFactor(key)));
}

/** Wet tonnes times distance, by road; what is burned here goes nowhere. */
export function haulage(sheet: Sheet, sent: readonly Sent[]): Quantity {
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
