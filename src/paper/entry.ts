import type { GivenInput } from '../case/case.ts';
import { type Outcome, type Problem, outcome } from '../case/problem.ts';
import { Decimal } from '../kernel/evaluate/decimal-settings.ts';
import { keepsBounds } from '../kernel/evaluate/keeps-bounds.ts';
import type { Bounds } from '../kernel/expression/operation.ts';
import type { Provenance } from '../kernel/graph/input-declaration.ts';
import { entryFactor } from '../kernel/units/entry-unit.ts';
import { type Unit, parseUnit } from '../kernel/units/unit.ts';
import { ambiguousSymbols, withTradeSymbols, worths } from './trade-units.ts';

/** What an input takes: its name, the unit it is kept in, and what can be true of it. */
export interface Entry {
  readonly id: string;
  readonly label: string;
  readonly unit: string;
  readonly allowed: Bounds;
}

export interface FoundFigure {
  readonly value: string;
  readonly provenance: Provenance;
}

/** Turns a figure as given into the unit of the input, exactly. Refuses another kind of unit by name, and what cannot be true. */
export function givenFigure(entry: Entry, given: GivenInput): Outcome<FoundFigure> {
  const value = inUnitOf(entry, given.value, given.unit);
  if (!value.ok) return value;
  const facts = Object.fromEntries(
    (['date', 'year', 'boundary', 'allocation', 'gwp'] as const).flatMap((fact) => {
      const told = given[fact];
      return told === undefined ? [] : [[fact, told]];
    }),
  );
  const provenance: Provenance = {
    status: given.status ?? 'none',
    source: given.source ?? 'Given without a source',
    ...(Object.keys(facts).length === 0 ? {} : { details: facts }),
  };
  return outcome({ value: value.value, provenance }, outside(entry, value.value));
}

/** Brings a currency that is written before the number ("$0.1/kWh") to where units stand ("0.1 $/kWh"). */
function currencyBehind(typed: string): string {
  const match = /^\s*([+-]?)\s*(US\$|[$€£])\s*([\d.]+(?:[eE][+-]?\d{1,3})?)\s*(\S.*)$/u.exec(typed);
  if (match === null) return typed;
  const [, sign = '', currency = '', digits = '', rest = ''] = match;
  return `${sign}${digits} ${currency}${/^per\b/iu.test(rest) ? ' ' : ''}${rest}`;
}

/** Takes what a person typed apart into a number and a unit ("" where none was written); null where there is no number. */
export function splitTyped(typed: string): { readonly digits: string; readonly unit: string } | null {
  const plain = currencyBehind(typed.replace(/\u2212/gu, '-'));
  const match = /^\s*([+-]?\d+(?:\.\d+)?(?:[eE][+-]?\d{1,3})?)\s*(.*?)\s*$/u.exec(plain);
  return match === null ? null : { digits: plainDigits(match[1] ?? ''), unit: match[2] ?? '' };
}

function inUnitOf(entry: Entry, digits: string, writtenUnit: string): Outcome<string> {
  if (writtenUnit === '') return outcome(plainDigits(digits), []);
  const unit = unitFrom(writtenUnit);
  const ambiguous = unit !== null && [...unit.exponents.keys()].some((symbol) => ambiguousSymbols.has(symbol));
  if (ambiguous) return outcome('', [{ kind: 'which ton', id: entry.id, given: writtenUnit }]);
  const factor = unit === null ? null : entryFactor(unit, parseUnit(entry.unit), worths);
  if (factor === null)
    return outcome('', [
      { kind: 'wrong unit', id: entry.id, label: entry.label, given: writtenUnit, wanted: entry.unit },
    ]);
  return outcome(factor === '1' ? plainDigits(digits) : new Decimal(digits).times(factor).toString(), []);
}

function unitFrom(text: string): Unit | null {
  try {
    return parseUnit(withTradeSymbols(text));
  } catch {
    return null;
  }
}

/** The digits as typed, without a plus sign; an exponent is written out. */
function plainDigits(digits: string): string {
  return /[eE+]/u.test(digits) ? new Decimal(digits).toString() : digits;
}

function outside(entry: Entry, digits: string): Problem[] {
  return keepsBounds(digits, entry.allowed)
    ? []
    : [{ kind: 'outside', id: entry.id, label: entry.label, given: digits, unit: entry.unit, allowed: entry.allowed }];
}
