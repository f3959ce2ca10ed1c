import { type Lot, type LotFigure } from '../../case/lots.ts';
import { type Outcome, outcome } from '../../case/problem.ts';
import { type Entry, givenFigure, splitTyped } from '../../paper/entry.ts';
import { editStructure } from '../edit-structure.ts';
import type { OpenCase } from '../open-case.ts';
import { lotEntry, readingEntry } from './lot-entries.ts';

/** What can be typed of a lot: one of its figures, or readings one after the other. */
export type LotField = LotFigure | 'moisture' | 'unusable';

/**
 * Gives a lot a figure as typed ("318", "12.4 %", "290 EUR/adt"), or readings with spaces between them; nothing typed takes it away. Refuses what
 * cannot be read or cannot be true.
 */
export function changeLot(open: OpenCase, lotId: string, field: LotField, typed: string): Outcome<OpenCase> {
  const { lots, currency } = open.content;
  const lot = lots?.offers.find(({ id }) => id === lotId);
  if (lot === undefined)
    return outcome(open, [
      {
        kind: 'unknown reference',
        path: 'lots.offers',
        given: lotId,
        what: 'lot',
        known: (lots?.offers ?? []).map(({ id }) => id),
      },
    ]);
  const isReading = field === 'moisture' || field === 'unusable';
  const entry = isReading ? readingEntry(lotId, field) : lotEntry(currency, lotId, lot.basis, field);
  const parts = isReading ? typed.split(/\s+/u).filter((part) => part !== '') : typed.trim() === '' ? [] : [typed];
  const values: string[] = [];
  for (const part of parts) {
    const value = valueOf(entry, part);
    if (!value.ok) return value;
    values.push(value.value);
  }
  return editStructure(open, {
    kind: 'put lot',
    lot: isReading ? withReadings(lot, field, values) : withFigure(lot, field, values[0]),
  });
}

function valueOf(entry: Entry, typed: string): Outcome<string> {
  const parts = splitTyped(typed);
  if (parts === null || /^[.,]/u.test(parts.unit))
    return outcome('', [{ kind: 'not a number', id: entry.id, given: typed }]);
  const found = givenFigure(entry, { value: parts.digits, unit: parts.unit });
  return found.ok ? outcome(found.value.value, []) : found;
}

/** The lot with readings in the place of those it has; none takes them away. */
export function withReadings(lot: Lot, field: 'moisture' | 'unusable', values: readonly string[]): Lot {
  const { [field]: _before, ...rest } = lot;
  return values.length === 0 ? rest : { ...rest, [field]: values };
}

/** The lot with another figure; none takes it away. */
export function withFigure(lot: Lot, figure: LotFigure, value: string | undefined): Lot {
  const { [figure]: _before, ...rest } = lot.figures;
  return { ...lot, figures: value === undefined ? rest : { ...rest, [figure]: value } };
}
