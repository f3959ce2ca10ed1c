import type { Destination } from '../../case/case.ts';
import { type Quantity, constant, total } from '../../kernel/expression/quantity.ts';
import { balanceOf, openTo, shareStem } from '../outlet-years.ts';
import type { Residue } from '../residue.ts';
import { type PlanSheet, yearInput } from './plan-sheet.ts';

/** Shares of a stream by destination in years that differ from today; they total the whole. */
export interface SharesOfYear {
  /** The year of the plan from which they hold. */
  readonly from: number;
  readonly of: ReadonlyMap<string, Quantity>;
}

const [zero, one] = [constant('0'), constant('1')];

/**
 * Where a stream goes in each year: a share that is given for a year holds from it on, a destination that is closed takes nothing, and one
 * destination takes what the others leave. Null in years that are as today. Years that are alike share one value.
 */
export function sharesOfYears(sheet: PlanSheet, residue: Residue): (year: number) => SharesOfYear | null {
  const { sheet: model } = sheet;
  const mayBurn = residue.stream !== 'ash';
  const given = new Map<string, Quantity>();
  const made: (SharesOfYear | null)[] = [];
  let before: readonly (Quantity | 'balance' | null)[] = [];
  for (const year of sheet.years) {
    const open = openTo(model.case, mayBurn, year);
    const balance = balanceOf(residue.stream, open);
    if (balance === undefined) {
      model.problems.push({
        kind: 'no outlet open',
        stream: residue.label,
        year: String(Number(sheet.plan.start) + year),
      });
      return () => null;
    }
    const parts = residue.parts.map(({ destination, share }) => {
      const isOpen = open.includes(destination);
      const ofYear = isOpen && destination !== balance ? givenShare(sheet, residue, destination, year) : null;
      if (ofYear !== null) given.set(destination.id, ofYear);
      if (!isOpen) return null;
      return destination === balance ? ('balance' as const) : (given.get(destination.id) ?? share);
    });
    const isSame = year > 0 && parts.every((part, place) => part === before[place]);
    before = parts;
    made[year] = isSame
      ? (made[year - 1] ?? null)
      : isToday(residue, parts)
        ? null
        : { from: year, of: written(sheet, residue, parts, year) };
  }
  return (year) => made[year] ?? null;
}

function givenShare(sheet: PlanSheet, { stream, label }: Residue, { id, label: place }: Destination, year: number) {
  const name = shareStem(stream, id);
  return yearInput(sheet, name, `${label}: share to ${place.toLowerCase()}`, year, '1', {
    entry: '%',
    allowed: { least: '0', most: '100' },
  });
}

/** The first part of a residue is the one that takes what the others leave today. */
function isToday({ parts }: Residue, now: readonly (Quantity | 'balance' | null)[]): boolean {
  return now.every((part, place) => (place === 0 ? part === 'balance' : part === parts[place]?.share));
}

function written(
  sheet: PlanSheet,
  { stream, label, parts }: Residue,
  now: readonly (Quantity | 'balance' | null)[],
  year: number,
): ReadonlyMap<string, Quantity> {
  const taken = total(
    now.flatMap((part) => (part === null || part === 'balance' ? [] : [part])),
    '1',
  );
  // Nothing given besides leaves the whole; more than the whole fails in words, as it does in the statement.
  const left = taken.operation.op === 'constant' ? one : taken.complement().within({ least: '0' });
  return new Map(
    parts.map(({ destination }, place): readonly [string, Quantity] => {
      const part = now[place] ?? null;
      const share = part === null ? zero : part === 'balance' ? left : part;
      const from = String(Number(sheet.plan.start) + year);
      const named = sheet.sheet.define(
        `investment.outlet.${stream}.${destination.id}.${String(year)}`,
        `${label}: share to ${destination.label.toLowerCase()}, from ${from}`,
        '1',
        share,
        {
          where: sheet.where,
          shownIn: '%',
          note: part === 'balance' ? 'What the other destinations leave.' : 'In force from this year on.',
        },
      );
      return [destination.id, named];
    }),
  );
}
