import { type Quantity, constant } from '../../kernel/expression/quantity.ts';
import type { StageEntry } from '../catalogue.ts';
import { type Sheet, notNegative } from '../sheet.ts';
import type { StagePlace } from './stage-place.ts';

/** What the clarifier of a washer or thickener needs, per bone-dry tonne that enters the stage. */
export interface Clarifier {
  /** kWh/bdt. */
  readonly electricity: Quantity;
  /** kg/bdt; null where nobody gave a dose. */
  readonly polymer: Quantity | null;
}

/**
 * A dissolved-air clarifier is an attachment of its washer or thickener: power and polymer per cubic metre of filtrate. The usual electricity
 * of the stage covers it, so both are there only where somebody gives them.
 */
export function clarifierOf(sheet: Sheet, place: StagePlace, entry: StageEntry): Clarifier {
  const none: Clarifier = { electricity: constant('0', 'kWh/bdt'), polymer: null };
  if (entry.washer === undefined || (place.stage.filtrate ?? 'clarifier') !== 'clarifier') return none;
  const { where } = place;
  const power = {
    id: `${place.id}.clarifierElectricity`,
    label: 'Clarifier electricity',
    where,
    unit: 'kWh/m3',
    allowed: notNegative,
  };
  const dose = {
    id: `${place.id}.clarifierPolymer`,
    label: 'Clarifier polymer, active',
    where,
    unit: 'kg/m3',
    allowed: notNegative,
  };
  if (!sheet.has(power) && !sheet.has(dose)) return none;
  const inlet = sheet.graph.later(`${place.id}.consistencyIn`, '1');
  const removed = sheet.graph.later(`${place.id}.waterRemoved`, '1');
  const perDry = removed.times(inlet.complement()).dividedBy(inlet).times(constant('1', 'm3/bdt'));
  const filtrate = sheet.define(`${place.id}.filtrate`, 'Filtrate to the clarifier', 'm3/bdt', perDry, {
    where,
    note: 'Water with the stock at the consistency in, times the share that is removed.',
  });
  return {
    electricity: sheet.has(power) ? filtrate.times(sheet.input(power)) : none.electricity,
    polymer: sheet.has(dose) ? filtrate.times(sheet.input(dose)) : null,
  };
}

/** The polymer of clarifiers is bought with that of the sludge presses. */
export const clarifierChemical = 'sludge-polymer';
