import { type Quantity, constant, total } from '../../kernel/expression/quantity.ts';
import type { CostLine } from '../accounts.ts';
import { sumOf } from './by-year.ts';
import { carbonByAllocation } from './carbon-by-allocation.ts';
import { type PlanSheet, yearInput } from './plan-sheet.ts';
import { type PriceGroup, priceGroupOf, priceGroups } from './price-group.ts';
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
export function savings(sheet: PlanSheet, { on, made }: Running): (year: number) => Quantity {
  const groups = priceGroups.flatMap(({ id, label }) => groupSaving(sheet, id, label));
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

function groupSaving(sheet: PlanSheet, group: PriceGroup, label: string): readonly GroupSaving[] {
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
  const allocated = group === 'carbon' ? carbonByAllocation(sheet) : () => null;
  const price = risen(sheet, group, label);
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

/** Price of a year over today's: an index given for the year, else the last one before it, grown on from there. */
function risen(sheet: PlanSheet, group: PriceGroup, label: string): (year: number) => Quantity | null {
  const growth = growthOf(sheet, group, label);
  const made: (Quantity | null)[] = [null];
  for (const year of sheet.years.slice(1)) {
    const given = yearInput(sheet, `year.${group}`, `${label}, price over today's`, year, '1', '%');
    const before = made[year - 1] ?? null;
    made[year] = given ?? (growth === null ? before : before === null ? growth : before.times(growth));
  }
  return (year) => made[year] ?? null;
}

/** 1 + growth over general inflation; null where nobody gave one. */
function growthOf({ sheet, where }: PlanSheet, group: PriceGroup, label: string): Quantity | null {
  const spec = {
    id: `investment.growth.${group}`,
    label: `${label}, growth over inflation`,
    where,
    unit: '1',
    entry: '%',
    allowed: { least: '-50', most: '100' },
  };
  return sheet.has(spec) ? sheet.input(spec).plus(constant('1')) : null;
}
