import { type Quantity, constant, total } from '../../kernel/expression/quantity.ts';
import type { CostLine } from '../accounts.ts';
import { type ByYear, sumOf } from './by-year.ts';
import { carbonByAllocation } from './carbon-by-allocation.ts';
import type { PlanSheet } from './plan-sheet.ts';
import { type PriceGroup, priceGroupOf, priceGroups } from './price-group.ts';
import type { PriceOfYear } from './price-of-year.ts';
import type { Running } from './running.ts';

/** A group of lines whose prices rise together: what the project saves of them, before any ramp. */
interface GroupSaving {
  /** Money of a year in which all planned recovered stock is made, that follows the stock made. */
  readonly following: (year: number) => Quantity | null;
  /** Money a year that is there while the line is, whatever it makes. */
  readonly standing: (year: number) => Quantity | null;
  /** Price of a year over today's; null where it is today's. */
  readonly risen: (year: number) => Quantity | null;
  /** Whether any year differs from today. */
  readonly moves: boolean;
}

/**
 * What the project saves in each year against the base route, in the money of the plan. It is taken from the lines of the two statements that
 * stop when a route is given up, each rising with its group of prices; capital charges have no part in it.
 */
export function savings(
  sheet: PlanSheet,
  { on, made }: Running,
  priceOf: PriceOfYear,
  allocation: ByYear,
): (year: number) => Quantity {
  const groups = priceGroups.flatMap(({ id, label }) => groupSaving(sheet, id, label, priceOf, allocation));
  const nothing = constant('0', `${sheet.sheet.case.currency}/a`);
  const still = groups.filter((group) => !group.moves);
  const moving = groups.filter((group) => group.moves);
  // Groups whose prices stay as they are make one sum for all years.
  const stillOf = (part: 'following' | 'standing'): Quantity | null => sumOf(still.map((group) => group[part](0)));
  const [stillFollowing, stillStanding] = [stillOf('following'), stillOf('standing')];
  const of = (part: 'following' | 'standing', year: number, constantPart: Quantity | null): Quantity => {
    const risen = moving.map((group) => {
      const [money, price] = [group[part](year), group.risen(year)];
      return money === null || price === null ? money : money.times(price);
    });
    return sumOf([constantPart, ...risen]) ?? nothing;
  };
  return (year) =>
    sheet.inMoney(
      of('following', year, stillFollowing)
        .times(made(year))
        .plus(of('standing', year, stillStanding).times(on(year))),
      year,
    );
}

function groupSaving(
  sheet: PlanSheet,
  group: PriceGroup,
  label: string,
  priceOf: PriceOfYear,
  allocation: ByYear,
): readonly GroupSaving[] {
  const lines = [
    ...linesOf(sheet, sheet.base, group).map((line) => ({ line, sign: 1 })),
    ...linesOf(sheet, sheet.project, group).map((line) => ({ line, sign: -1 })),
  ];
  if (lines.length === 0) return [];
  const saved = (wanted: (line: CostLine) => boolean): Quantity | null => {
    const terms = lines.filter(({ line }) => wanted(line));
    if (terms.length === 0) return null;
    const unit = `${sheet.sheet.case.currency}/a`;
    const side = (sign: number): Quantity =>
      total(
        terms.filter((term) => term.sign === sign).map(({ line }) => sheet.sheet.graph.later(line.perYearId, unit)),
        unit,
      );
    return side(1).minus(side(-1));
  };
  const name = (id: string, words: string, quantity: Quantity | null): Quantity | null =>
    quantity === null
      ? null
      : sheet.sheet.define(`investment.${id}.${group}`, `${label}, ${words}`, 'EUR/a', quantity, {
          where: sheet.where,
          note: 'Base route less project, lines that stop when a route is given up.',
        });
  const following = name(
    'saved',
    'saved a year by recovered stock',
    saved((line) => line.behaviour !== 'per year'),
  );
  const standing = name(
    'savedStanding',
    'saved a year by having the line',
    saved((line) => line.behaviour === 'per year'),
  );
  const allocated = group === 'carbon' ? carbonByAllocation(sheet, allocation) : () => null;
  const price = priceOf(group);
  return [
    {
      following: (year) => allocated(year) ?? following,
      standing: () => standing,
      risen: price,
      moves: sheet.years.some((year) => price(year) !== null || allocated(year) !== null),
    },
  ];
}

function linesOf({ sheet }: PlanSheet, { statement }: PlanSheet['base'], group: PriceGroup): readonly CostLine[] {
  return statement.lines.filter(
    (line) => line.avoidable && line.account !== 'capital' && priceGroupOf(line, sheet.case.materials) === group,
  );
}
